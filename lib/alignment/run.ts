import type { MountTruth } from '../pointing/achieved-errors';
import type { AlignmentOutcome } from '../pointing/pointing-model';
import type { Matrix3 } from '../units/matrix';
import { axesAt, type Motion } from './motion';
import type { RunInput } from './run-input';
import type { TurningSky } from './run-sky';
import type { Confirmed, RunRefusal, RunView } from './run-state';
import type { Progress } from './stages';
import type { StartPosition } from './start-position';
import type { Now } from './steering';

/** One confirm with all that marking and debrief want to know of its instant. */
export type ConfirmedMoment = Confirmed & {
  /** As it was when it was pressed. */
  view: RunView;
  /** Tube minus reading in each axis: what the play spoils the readings by. */
  playArcmin: { azimuth: number; altitude: number };
  /** How the mount stood then. */
  truth: MountTruth;
};

/** Two confirmed stars and what the computer made of them. */
export type Alignment = {
  atMs: number;
  outcome: AlignmentOutcome;
  confirms: readonly ConfirmedMoment[];
};

/** One motion after another, the latest first; shared between runs, so that a copy costs nothing. */
export type Past = { motion: Motion; before: Past | null };

/** A run up to its last action. Immutable; made by `startRun` and `act`. */
export type Run = {
  readonly input: RunInput;
  readonly believed: TurningSky;
  readonly lastMs: number;
  readonly progress: Progress;
  /** Local sky → a base that faces north on the ground as it is now. */
  readonly stand: Matrix3;
  readonly start: StartPosition | null;
  readonly motion: Motion;
  readonly past: Past | null;
  /** When the present go-to or step is done, even if that has been; null for what has no end. */
  readonly arrivesAtMs: number | null;
  readonly focus: number;
  /** Those that count now. */
  readonly confirms: readonly ConfirmedMoment[];
  /** Of the whole run, dropped ones too. */
  readonly confirmsMade: number;
  readonly outcome: AlignmentOutcome | null;
  /** Every alignment that was made, dropped ones too. */
  readonly alignments: readonly Alignment[];
  readonly refusal: RunRefusal | null;
};

/** Whether a go-to or a step is under way. */
export const driving = (run: Run, atMs: number): boolean =>
  run.arrivesAtMs !== null && atMs < run.arrivesAtMs;

/** What the computer points by; null until an alignment agrees. */
const modelOf = ({ outcome }: Run) => (outcome?.kind === 'agree' ? outcome.model : null);

export const nowAt = (run: Run, atMs: number): Now => ({
  atMs,
  axes: axesAt(run.motion, run.input.setup, atMs),
  truth: run.motion.truth,
  model: modelOf(run),
  sky: run.believed,
  setup: run.input.setup,
});

/** The run with another motion from now on. */
export const moving = (run: Run, motion: Motion, arrivesAtMs: number | null): Run => ({
  ...run,
  motion,
  past: { motion: run.motion, before: run.past },
  arrivesAtMs,
});
