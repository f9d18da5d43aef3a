'use client';

import { useEffect, useRef, useState } from 'react';
import {
  dressRehearsalDraftSchema,
  emptyDressRehearsalDraft,
  type DressRehearsalDraft,
} from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import type { RehearsalStage } from '@/lib/rehearsal/stages';
import type { BenchSession } from '../bench/bench-lab-props';
import { LogThrottle } from '../run/log-throttle';
import type { SaveState } from '../shell/draft-saver';
import { draftLeftBehind, useDraftSaving } from '../shell/use-draft-saving';
import { eveningAfter, type StageChange } from './rehearsal-work';
import { runBeginsAgainText } from './stage-words';

const readDraft = (json: unknown): DressRehearsalDraft | null =>
  dressRehearsalDraftSchema.safeParse(json).data ?? null;

export type KeptEvening = {
  draft: DressRehearsalDraft;
  said: string;
  tell: (said: string) => void;
  work: (stage: RehearsalStage, change: StageChange, said?: string) => void;
  goTo: (stage: RehearsalStage) => void;
  saveState: SaveState;
  /** It has been sent: nothing more is saved. */
  stop: () => void;
};

/** A draft is as long as its log: a long one is saved less often. */
type LongDraft = { draft: DressRehearsalDraft; length: number };

/**
 * The evening's work, and its saving: what is done at a bench at once, the log of the run, which grows
 * with every touch of a strip, every few seconds and when the page is left.
 */
export function useEvening({
  attemptKey,
  nextSequence = 1,
  onSave,
  draft: stored,
}: Pick<BenchSession, 'attemptKey' | 'nextSequence' | 'onSave' | 'draft'>): KeptEvening {
  const saving = useDraftSaving({ attemptKey, nextSequence, save: onSave, readDraft });
  const [draft, setDraft] = useState(
    () =>
      draftLeftBehind(attemptKey, nextSequence, readDraft) ??
      readDraft(stored) ??
      emptyDressRehearsalDraft,
  );
  const [said, tell] = useState('');
  // Two things may be done between two renderings: the second must build on the first.
  const latest = useRef(draft);
  const [throttle] = useState(
    () =>
      new LogThrottle<LongDraft>(({ draft: grown }) => {
        saving.push(grown);
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

  const keep = (next: DressRehearsalDraft, soon: boolean): void => {
    const steered = next.log !== latest.current.log && next.log.length > 0 && !soon;
    latest.current = next;
    setDraft(next);
    if (steered) throttle.push({ draft: next, length: next.log.length });
    else {
      throttle.drop();
      saving.push(next);
    }
  };

  return {
    draft,
    said,
    tell,
    work: (stage, change, text = '') => {
      const after = eveningAfter(latest.current, stage, change);
      keep(after.draft, stage === 'start-position');
      tell(after.runBeginsAgain ? `${text} ${runBeginsAgainText}`.trim() : text);
    },
    goTo: (at) => {
      tell('');
      if (at !== latest.current.at) keep({ ...latest.current, at }, true);
    },
    saveState: saving.saveState,
    stop: () => {
      throttle.drop();
      saving.stop();
    },
  };
}
