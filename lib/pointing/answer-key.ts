import type { NakedEyePlanet } from '../sky/sky-frame';

/** What the learner can point at: a star by HIP number, or a planet by name. */
export type SkyObjectId = `hip-${number}` | NakedEyePlanet;

/** Why a star may not serve, with the figures that decided it. Angles in degrees. */
export type UnusableReason =
  | { code: 'no-name' }
  | { code: 'too-faint'; magnitude: number; faintestMagnitude: number }
  | { code: 'variable' }
  | { code: 'too-low'; altitudeDeg: number; lowestAltitudeDeg: number }
  | { code: 'too-high'; altitudeDeg: number; highestAltitudeDeg: number }
  | { code: 'behind-horizon'; altitudeDeg: number; horizonAltitudeDeg: number; marginDeg: number }
  | { code: 'sky-too-bright'; seenAsMagnitude: number; nakedEyeLimit: number }
  | { code: 'near-moon'; distanceDeg: number; moonDistanceDeg: number }
  | { code: 'behind-cloud' };

/** Another star or planet nearby that could be taken for this one. */
export type Caution = {
  neighbour: SkyObjectId;
  neighbourName: string;
  separationDeg: number;
  /** How much fainter the neighbour looks, in magnitudes; negative when it looks brighter. */
  fainterByMagnitudes: number;
};

export type AnswerKeyStar = {
  hip: number;
  name: string;
  azimuthDeg: number;
  /** Refracted. */
  altitudeDeg: number;
  magnitude: number;
  usable: boolean;
  reasons: readonly UnusableReason[];
  cautions: readonly Caution[];
};

export type AnswerKeyPair = {
  /** HIP numbers. */
  stars: readonly [number, number];
  separationDeg: number;
  /** Root mean square over the grid; null when the pair leaves something undetermined. */
  expectedErrorArcmin: number | null;
  /** Share of targets that land inside the observing eyepiece, 0–1. */
  hitRate: number;
  /** 0–100 for choosing this pair with its cautions named. */
  mark: number;
};

/** A public format: `npm run answer-key` prints it. Names are kept. */
export type AnswerKey = {
  /** UTC, ISO 8601. */
  instant: string;
  /** Naked-eye limiting magnitude at the zenith. */
  nakedEyeLimit: number;
  stars: readonly AnswerKeyStar[];
  /** Best first. */
  pairs: readonly AnswerKeyPair[];
};
