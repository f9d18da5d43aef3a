'use client';

import { useEffect, useState, useSyncExternalStore } from 'react';
import type { SaveDraft, SaveState } from './draft-saver';
import { DraftSaver } from './draft-saver';
import type { ReadDraft } from './kept-draft';
import { forgetDraft, keepDraft, keptDraft } from './kept-draft';

type DraftSavingInput<Draft> = {
  attemptKey: string;
  nextSequence: number;
  /** Undefined where only this tab keeps the draft, as for a visitor. */
  save: SaveDraft<Draft> | undefined;
  /** The same function on every render. */
  readDraft: ReadDraft<Draft>;
};

const nothingToSave: SaveState = { state: 'saved' };

/** Saves what is pushed, tells how that goes, and warns before leaving with something unsaved. */
export function useDraftSaving<Draft>({
  attemptKey,
  nextSequence,
  save,
  readDraft,
}: DraftSavingInput<Draft>): {
  saveState: SaveState;
  push: (draft: Draft) => void;
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
    const left = draftLeftBehind(attemptKey, nextSequence, readDraft);
    if (left !== null) saver.push(left);
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
  }, [saver, attemptKey, nextSequence, readDraft]);
  return {
    saveState,
    push: (draft) => {
      if (saver === null) keepDraft(attemptKey, { sequence: 1, draft });
      else saver.push(draft);
    },
    stop: () => {
      if (saver === null) forgetDraft(attemptKey);
      else saver.stop();
    },
  };
}

/**
 * A draft that an earlier visit of this tab could not send. One that the server, or another device,
 * has overtaken is left alone.
 */
export function draftLeftBehind<Draft>(
  attemptKey: string,
  nextSequence: number,
  readDraft: ReadDraft<Draft>,
): Draft | null {
  const kept = keptDraft(attemptKey, readDraft);
  return kept !== null && kept.sequence >= nextSequence ? kept.draft : null;
}

const noSubscription = (): (() => void) => () => undefined;
