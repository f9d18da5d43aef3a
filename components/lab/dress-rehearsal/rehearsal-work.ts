import type { RunLog } from '@/lib/alignment/run-log';
import {
  workAfter,
  type DressRehearsalDraft,
  type DressRehearsalSubmission,
} from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import type { RehearsalStage } from '@/lib/rehearsal/stages';

/** What is done at a stage: any part of the work but where one stands in it. */
export type StageChange = Partial<Omit<DressRehearsalDraft, 'at'>>;

/** Whether nothing but the start position has been set so far: no star depends on it yet. */
export const onlyStarted = (log: RunLog): boolean =>
  log.every((action) => action.do === 'set-start');

/**
 * The evening after something was done at a stage. Planning a pair is done on paper: it leaves a tube
 * that only lies at its start position as it is.
 */
export function eveningAfter(
  draft: DressRehearsalDraft,
  stage: RehearsalStage,
  change: StageChange,
): { draft: DressRehearsalDraft; runBeginsAgain: boolean } {
  if (stage === 'pick-the-pair' && onlyStarted(draft.log))
    return { draft: { ...draft, ...change }, runBeginsAgain: false };
  return workAfter(draft, stage, change);
}

/** A tube laid anew, with its clutches loose: whatever was aligned before is gone. */
export const startedAt = (azimuthDeg: number, altitudeDeg: number): StageChange => ({
  log: [{ at: 0, do: 'set-start', azimuthDeg, altitudeDeg }],
  clutchesLocked: false,
});

/** Clutches locked or loosed; loosed under an alignment, only the start is left. */
export const withClutches = ({ log }: DressRehearsalDraft, locked: boolean): StageChange => ({
  clutchesLocked: locked,
  log: onlyStarted(log) ? log : log.slice(0, 1),
});

/**
 * What is sent: the work, without where the learner stands in it. A tube that was laid and never steered
 * is no run: on a computer that stayed dark there was none to begin.
 */
export const handedIn = ({
  benches,
  clutchesLocked,
  plannedPair,
  log,
  packedUp,
}: DressRehearsalDraft): DressRehearsalSubmission => ({
  benches,
  clutchesLocked,
  plannedPair,
  packedUp,
  log: onlyStarted(log) ? [] : log,
});
