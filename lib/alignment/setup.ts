import type { ImageOrientation, TubeType } from '../optics/image-orientation';
import type { MountErrors } from '../pointing/pointing-model';
import type { SkyFrame } from '../sky/sky-frame';

export type { ImageOrientation };

/** The part of a kit that a run needs beside telescope and observing eyepiece. */
export type RunKit = {
  name: string;
  tubeType: TubeType;
  orientation: ImageOrientation;
  centringEyepiece: { focalLengthMm: number; apparentFieldDeg: number };
};

/**
 * The hidden truth of one evening's telescope. "The dot" is where the finder points, given in the
 * tube's own frame: to the right along the horizon and upward, seen from behind the tube.
 */
export type RunSetup = {
  /** The base's plane: how far off level, and towards which azimuth it rises. */
  base: { tiltDeg: number; risesTowardsDeg: number };
  /** The zero is what the index adds to the learner's own start altitude. */
  errors: MountErrors;
  dot: { rightArcmin: number; upArcmin: number };
  /** Play that is taken up when an axis turns the other way. */
  backlashArcmin: { azimuth: number; altitude: number };
  /** Which way the last move must go for the readings to be true: +1 is right, or up. */
  finalApproach: { azimuth: 1 | -1; altitude: 1 | -1 };
  /** What one count of the axis encoders is worth. */
  encoderStepArcsec: number;
  slewDegPerSecond: number;
  /** Of a compass needle at the place: east is positive. */
  declinationDeg: number;
  /**
   * The sky that the computer believes in, from the clock, date, zone and place that were entered;
   * for the instant at which the run starts, as the true frame of the variant is.
   */
  believed: SkyFrame;
  disturbances: readonly Disturbance[];
};

/** What happens to the telescope during the evening, unseen. Confirms are counted from 1. */
export type Disturbance =
  /** A tripod that was kicked, or a leg that sank: the base leans by this much more from then on. */
  | { kind: 'base-moves'; afterConfirm: number; tiltDeg: number; risesTowardsDeg: number }
  /** The whole stand was turned about the vertical. */
  | { kind: 'base-turns'; afterConfirm: number; azimuthDeg: number }
  /** A clutch lets the tube creep while the reading stands: degrees that the tube moves by, once. */
  | { kind: 'axis-slips'; afterConfirm: number; azimuthDeg: number; altitudeDeg: number }
  /** The supply fell below what the computer needs: the alignment is forgotten, the readings are zero. */
  | { kind: 'computer-resets'; afterConfirm: number };
