'use client';

import { useEffect, useRef, useState } from 'react';
import type { BenchViewProps } from './bench-parts';
import { changed, redone, startHistory, undone, type WorkHistory } from './work-history';

export type BenchWork<D> = {
  draft: D;
  /** For the status line. */
  said: string;
  change: BenchViewProps<unknown, D>['change'];
  canUndo: boolean;
  canRedo: boolean;
  undo: () => void;
  redo: () => void;
};

/** The work on a bench: each change is pushed to be saved, and can be taken back. */
export function useBenchWork<D>(
  start: D,
  push: (draft: D) => void,
  /** Whether the one draft may follow the other; true where anything may be taken back. */
  mayBecome: (from: D, to: D) => boolean = () => true,
): BenchWork<D> {
  const [history, setHistory] = useState(() => startHistory(start));
  const [said, say] = useState('');
  // Two changes may come between two renderings: the second must build on the first.
  const latest = useRef(history);
  const gesture = useRef(0);

  useEffect(() => {
    const end = (): void => {
      gesture.current += 1;
    };
    const ends = ['pointerup', 'pointercancel', 'keyup', 'blur'] as const;
    for (const name of ends) window.addEventListener(name, end, true);
    return () => {
      for (const name of ends) window.removeEventListener(name, end, true);
    };
  }, []);

  const go = (next: WorkHistory<D>, message: string): void => {
    if (next === latest.current) return;
    if (!mayBecome(latest.current.draft, next.draft)) {
      say('What happened has happened: in a check it cannot be taken back.');
      return;
    }
    latest.current = next;
    setHistory(next);
    say(message);
    push(next.draft);
  };

  return {
    draft: history.draft,
    said,
    change: (draft, message = '', { merge = false } = {}) => {
      if (draft === latest.current.draft) {
        say(message);
        return;
      }
      go(changed(latest.current, draft, merge ? gesture.current : null), message);
    },
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    undo: () => {
      go(undone(latest.current), 'The last step is taken back.');
    },
    redo: () => {
      go(redone(latest.current), 'The step is done again.');
    },
  };
}
