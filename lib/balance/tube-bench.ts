import type { PlacedMass } from './centre-of-mass';
import type { Creep } from './creep';
import type { AltitudeRange } from './holding';

export type PartOnTube = PlacedMass & {
  id: string;
  name: string;
  /** Parts of one slot take each other's place: two eyepieces, the two ends for one weight. */
  slot: string | null;
};

/** A tube on its mount with everything that can be put on it. */
export type BalanceBench = {
  /** The tube with nothing on it. */
  tube: PlacedMass;
  parts: readonly PartOnTube[];
  /** Between which places the clamp can grip the bar, millimetres on the tape. */
  bar: { leastMm: number; mostMm: number };
  /** What the altitude clutch holds, set as it should be, newton metres. */
  holdingTorqueNm: number;
  /** Where the tube has to hold. */
  range: AltitudeRange;
  /** Whether to say first what will happen; nothing can be touched before. */
  asksForesight: boolean;
  start: { clampMm: number; on: readonly string[]; handOn: boolean };
};

export type Moves = Creep['moves'];

/** What a person at the bench does, one thing at a time. */
export type BalanceAction =
  | { do: 'foresee'; moves: Moves }
  /** A hand under the tube, or away. */
  | { do: 'hand'; on: boolean }
  | { do: 'clamp'; open: boolean }
  | { do: 'stop'; in: boolean }
  | { do: 'slide'; toMm: number }
  | { do: 'tip'; toDeg: number }
  | { do: 'part'; id: string; on: boolean }
  /** After a fall: back into the clamp, with a hand under it. */
  | { do: 'pick-up' };

/** What the clutch alone did with the tube, at one place of the clamp and with some parts on. */
export type Trial = {
  /** Counts changes of place and parts: trials of the same number are of the same tube. */
  arrangement: number;
  clampMm: number;
  altitudeDeg: number;
  moves: Moves;
  restDeg: number;
};

/** Nothing but luck kept the tube from the ground, or not even that. */
export type Hazard = {
  /** The clamp or the stop screw gave the tube free with no hand under it; or the hand left it loose. */
  id: 'opened-unsupported' | 'let-go-loose';
  outcome: 'fell' | 'caught-by-stop-screw' | 'clamp-alone-held';
};

export type BalanceState = {
  foreseen: Moves | null;
  handOn: boolean;
  clampOpen: boolean;
  stopIn: boolean;
  clampMm: number;
  altitudeDeg: number;
  on: readonly string[];
  /** It lies on the ground. */
  fallen: boolean;
  arrangement: number;
  trials: readonly Trial[];
  hazards: readonly Hazard[];
  /** Each time the weight changed with no hand on it and it swung; degrees from and to. */
  swings: readonly { fromDeg: number; toDeg: number }[];
  /** Altitudes at which the clamp was opened with the tube raised too high for that. */
  openedRaisedDeg: readonly number[];
};

export const startOf = ({ start }: BalanceBench): BalanceState => ({
  foreseen: null,
  handOn: start.handOn,
  clampOpen: false,
  stopIn: true,
  clampMm: start.clampMm,
  altitudeDeg: 0,
  on: start.on,
  fallen: false,
  arrangement: 0,
  trials: [],
  hazards: [],
  swings: [],
  openedRaisedDeg: [],
});
