import type { Matrix3 } from '../units/matrix';

/** What the two axes read, in degrees: azimuth clockwise in [0°, 360°), altitude upward. */
export type Readings = { azimuthDeg: number; altitudeDeg: number };

/** What the mount's making gets wrong, in degrees. Frames and signs: design, mechanics of the mount. */
export type MountErrors = { altitudeZeroDeg: number; coneDeg: number; axisSkewDeg: number };

/**
 * What a pointing computer believes of its mount: how the base stands (local sky → mount) and what
 * the altitude reads too little. It knows nothing of cone and skew.
 */
export type PointingModel = { base: Matrix3; altitudeZeroDeg: number };

/** What came of aligning on two stars. Angles in degrees unless named otherwise. */
export type AlignmentOutcome =
  /** The two agree: the computer points by this model from now on. */
  | {
      kind: 'agree';
      model: PointingModel;
      /** Between the two stars less between the two readings, after the zero that was solved for. */
      mismatchArcmin: number;
      /** Between the vertical of the fitted base and the true one. */
      baseTiltDeg: number;
    }
  /** The angle between the readings is not the angle between the stars. */
  | { kind: 'disagree'; mismatchArcmin: number }
  /** Solved zero only: the angles agree only with a zero that no mount has (more than 3°), or never. */
  | { kind: 'absurd-zero'; altitudeZeroDeg: number | null }
  /** A perfect angle, but the base would lie on its side (more than 5°): swapped or wrong stars. */
  | { kind: 'base-on-its-side'; baseTiltDeg: number; mismatchArcmin: number }
  /** The two stars leave something open: the same star twice, opposite stars, or equal azimuths. */
  | { kind: 'undetermined' };
