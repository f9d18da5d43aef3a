import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { KnownNote } from '@/lib/mastery/sign-off-note';
import type { SignOffSheet } from '@/lib/mastery/sign-off-sheet';
import {
  countUnread,
  isQueueOf,
  keepSheet,
  keptSheet,
  readQueue,
  writeQueue,
  type Owner,
} from './kept-on-device';
import { sendNotesTo } from './send-notes';
import { SignOffStore } from './sign-off-store';

function storeOf(sheet: SignOffSheet, owner: Owner): SignOffStore {
  const keeper = {
    read: () => readQueue(owner),
    write: (waiting: Parameters<typeof writeQueue>[1]) => writeQueue(owner, waiting),
    unread: () => countUnread(owner),
  };
  // The sheet that was taken along must know tomorrow what was sent today.
  const keepAlong = (known: readonly KnownNote[]) => {
    const kept = keptSheet(owner, new Date());
    if (kept !== null) keepSheet(owner, { ...kept.sheet, notes: [...known] }, kept.until);
  };
  const reachable = () => navigator.onLine;
  return new SignOffStore(sheet.notes, keeper, sendNotesTo(owner), keepAlong, reachable);
}

/** The queue of this teacher and class on this device, alive while the page is. */
export function useSignOff(sheet: SignOffSheet, teacherId: string) {
  const owner = useMemo(() => ({ classId: sheet.classId, teacherId }), [sheet.classId, teacherId]);
  const [store] = useState(() => storeOf(sheet, owner));
  const state = useSyncExternalStore(store.subscribe, store.snapshot, store.snapshot);
  useEffect(() => {
    const back = () => store.sendNow();
    const elsewhere = ({ key }: StorageEvent) => {
      if (isQueueOf(owner, key)) store.reread();
    };
    const seenAgain = () => {
      if (document.visibilityState === 'visible') store.sendNow();
    };
    store.start();
    // What was taken along is renewed whenever the server has shown the page anew.
    const kept = keptSheet(owner, new Date());
    if (kept !== null && kept.sheet !== sheet) keepSheet(owner, sheet, kept.until);
    window.addEventListener('online', back);
    window.addEventListener('storage', elsewhere);
    document.addEventListener('visibilitychange', seenAgain);
    return () => {
      store.stop();
      window.removeEventListener('online', back);
      window.removeEventListener('storage', elsewhere);
      document.removeEventListener('visibilitychange', seenAgain);
    };
  }, [store, owner, sheet]);
  return { store, state, owner };
}
