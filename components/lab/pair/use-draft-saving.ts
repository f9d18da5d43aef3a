'use client';

import { useEffect, useState, useSyncExternalStore } from 'react';
import type { PairDraft } from '@/lib/grading/pair-submission';
import type { SaveDraft, SaveState } from './draft-saver';
import { DraftSaver } from './draft-saver';

type DraftSavingInput = { attemptKey: string; nextSequence: number; save: SaveDraft | undefined };

const nothingToSave: SaveState = { state: 'saved' };

/** Saves what is pushed, tells how that goes, and warns before leaving with something unsaved. */
export function useDraftSaving({ attemptKey, nextSequence, save }: DraftSavingInput): {
  saveState: SaveState;
  push: (draft: PairDraft) => void;
  stop: () => void;
} {
  const [saver] = useState(() =>
    save === undefined ? null : new DraftSaver({ attemptKey, nextSequence, save }),
  );
  const saveState = useSyncExternalStore(
    saver?.subscribe ?? noSubscription,
    saver?.state ?? (() => nothingToSave),
    () => nothingToSave,
  );
  useEffect(() => {
    if (saver === null) return;
    const onOnline = (): void => {
      saver.retryNow();
    };
    const onLeave = (event: BeforeUnloadEvent): void => {
      if (saver.unsaved()) event.preventDefault();
    };
    window.addEventListener('online', onOnline);
    window.addEventListener('beforeunload', onLeave);
    return () => {
      window.removeEventListener('online', onOnline);
      window.removeEventListener('beforeunload', onLeave);
    };
  }, [saver]);
  return {
    saveState,
    push: (draft) => saver?.push(draft),
    stop: () => saver?.stop(),
  };
}

const noSubscription = (): (() => void) => () => undefined;
