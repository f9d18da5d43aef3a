'use client';

import { useEffect, useState } from 'react';
import type { RunLog } from '@/lib/alignment/run-log';
import type { RunDraft } from '@/lib/grading/run-submission';
import type { SaveState } from '../shell/draft-saver';
import { draftLeftBehind, useDraftSaving } from '../shell/use-draft-saving';
import { LogThrottle } from './log-throttle';
import { readRunDraft } from './read-run-draft';
import type { RunLabProps } from './run-lab-props';

/** Saves the log as it grows, at most every few seconds, and when the page is left. */
export function useRunSaving({
  attemptKey,
  nextSequence = 1,
  onSave,
  draft,
}: Pick<RunLabProps, 'attemptKey' | 'nextSequence' | 'onSave' | 'draft'>): {
  /** What the run is taken up from. */
  start: RunDraft;
  saveState: SaveState;
  push: (log: RunLog) => void;
  /** The run has been sent: nothing more is saved. */
  stop: () => void;
} {
  const saving = useDraftSaving({
    attemptKey,
    nextSequence,
    save: onSave,
    readDraft: readRunDraft,
  });
  const [start] = useState(() => draftLeftBehind(attemptKey, nextSequence, readRunDraft) ?? draft);
  const [throttle] = useState(
    () =>
      new LogThrottle<RunLog>((log) => {
        saving.push({ log: [...log] });
      }),
  );
  useEffect(() => {
    const leave = (): void => {
      throttle.flush();
    };
    window.addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', leave);
    return () => {
      window.removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', leave);
      throttle.flush();
    };
  }, [throttle]);
  return {
    start,
    saveState: saving.saveState,
    push: (log) => {
      throttle.push(log);
    },
    stop: () => {
      throttle.drop();
      saving.stop();
    },
  };
}
