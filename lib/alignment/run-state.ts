import type { AlignmentOutcome, Readings } from '../pointing/pointing-model';
import type { Vector3 } from '../units/vector';

export type RunStage =
  | 'start-position'
  /** Which star: picked by the learner, or proposed. */
  | 'choose-first'
  | 'centre-first'
  | 'choose-second'
  | 'centre-second'
  /** The result stands; a third star may be gone to. */
  | 'result'
  | 'check-third'
  | 'judged';

/** One confirmed star, as the axes read when it was confirmed. */
export type Confirmed = { hip: number; atMs: number; readings: Readings };

/** What the run shows at one instant; computed, never stored. */
export type RunView = {
  atMs: number;
  stage: RunStage;
  /** Where the optical axis points: local frame (east, north, up), as the refracted sky is seen. */
  tube: Vector3;
  /** Square to the tube: which way the tube would go when the altitude axis lifts it. */
  tubeUp: Vector3;
  /** Where the finder's dot lies on the sky. */
  dot: Vector3;
  readings: Readings;
  /** Driving by itself or by a step that is not finished. */
  moving: boolean;
  /** When the present go-to or step will be done; null while nothing drives. */
  arrivesAtMs: number | null;
  focus: number;
  /** The star the run is about: chosen, proposed or gone to. */
  targetHip: number | null;
  /** The star that the mount proposes now, in a task where it does. */
  proposedHip: number | null;
  confirmed: readonly Confirmed[];
  outcome: AlignmentOutcome | null;
  /** Said by the last action, for the status line and the panel. */
  refusal: RunRefusal | null;
};

/** Why an action was not taken. The run goes on as it was. */
export type RunRefusal =
  | { code: 'not-now' }
  | { code: 'still-moving' }
  | { code: 'out-of-order' }
  | { code: 'not-in-this-sky'; hip: number }
  | { code: 'not-proposed'; hip: number }
  | { code: 'same-star-twice' }
  | { code: 'below-the-horizon' }
  | { code: 'no-more-proposals' }
  | { code: 'may-not-pause' }
  /** The reading that was sent is not the one that the actions lead to. */
  | { code: 'does-not-add-up'; atMs: number };
