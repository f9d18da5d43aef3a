import type { Confirmed, RunStage, RunView } from '@/lib/alignment/run-state';
import type { AlignmentOutcome } from '@/lib/pointing/pointing-model';

/** What panels and tables show of a run. A new object only when something in it has changed. */
export type RunSnapshot = {
  stage: RunStage;
  /** Driving by itself. */
  moving: boolean;
  targetHip: number | null;
  proposedHip: number | null;
  confirmed: readonly Confirmed[];
  outcome: AlignmentOutcome | null;
  /** For the status line. */
  said: string;
  paused: boolean;
  /** The sky waits, as for the table. */
  held: boolean;
  /** Two hours are over: nothing moves any more. */
  over: boolean;
  /** So much has been done that only the judgement has room. */
  full: boolean;
  focus: number;
  rockers: Readonly<{ azimuth: number; altitude: number }>;
  /** The judgement that ended the run; null before it. */
  trusted: boolean | null;
  /** Whole minutes of sky time. */
  minutes: number;
  /** From tube or dot to the Sun, whole degrees, while the Sun is up and within 45°; else null. */
  sunDeg: number | null;
};

export type SnapshotExtras = Pick<
  RunSnapshot,
  'said' | 'paused' | 'held' | 'over' | 'full' | 'focus' | 'rockers' | 'trusted' | 'sunDeg'
>;

export const snapshotOf = (view: RunView, extras: SnapshotExtras): RunSnapshot => ({
  stage: view.stage,
  moving: view.moving,
  targetHip: view.targetHip,
  proposedHip: view.proposedHip,
  confirmed: view.confirmed,
  outcome: view.outcome,
  minutes: Math.floor(view.atMs / 60_000),
  ...extras,
});

/** The simulator keeps its lists and outcomes until they change, so identity is enough. */
export function sameSnapshot(a: RunSnapshot, b: RunSnapshot): boolean {
  return (
    a.stage === b.stage &&
    a.moving === b.moving &&
    a.targetHip === b.targetHip &&
    a.proposedHip === b.proposedHip &&
    a.confirmed === b.confirmed &&
    a.outcome === b.outcome &&
    a.said === b.said &&
    a.paused === b.paused &&
    a.held === b.held &&
    a.over === b.over &&
    a.full === b.full &&
    a.focus === b.focus &&
    a.rockers.azimuth === b.rockers.azimuth &&
    a.rockers.altitude === b.rockers.altitude &&
    a.trusted === b.trusted &&
    a.minutes === b.minutes &&
    a.sunDeg === b.sunDeg
  );
}
