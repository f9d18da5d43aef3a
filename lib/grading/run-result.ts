import type { FieldOffset } from '../optics/image-orientation';
import type { SkyObjectId } from '../pointing/answer-key';
import type { AlignmentOutcome } from '../pointing/pointing-model';
import type { RunTemplate } from '../variants/run-variant';
import type { PairFigures } from './pair-result';

export type RunCriterion = {
  id:
    | 'start-position'
    | 'first-star'
    | 'first-centring'
    | 'second-star'
    | 'second-centring'
    | 'pair'
    | 'judgement'
    | 'time';
  earned: number;
  possible: number;
};

/** A sample of where the tube pointed: local azimuth and altitude. */
export type PathPoint = { atMs: number; azimuthDeg: number; altitudeDeg: number };

export type RunStarResult = {
  /** The star that was meant. */
  hip: number;
  name: string;
  /** Where it stood when it was confirmed. */
  azimuthDeg: number;
  altitudeDeg: number;
  /** What was confirmed of the lights in the eyepiece's field (`reallyInField`); null for an empty one. */
  reallyId: SkyObjectId | null;
  reallyName: string | null;
  right: boolean;
  /** From the middle of the field to that light (or to the star that was meant when none was there). */
  offsetArcmin: number;
  /** The same as a place beside the middle of the field: on the sky, to the right and upward. */
  offsetOnSky?: FieldOffset;
  fieldRadiusArcmin: number;
  /** How far the play of the axes spoilt the readings. */
  backlashArcmin: number;
  finalApproachKept: boolean;
  path: readonly PathPoint[];
};

/** The achieved error over the sky: what go-tos would miss by. */
export type AchievedCell = { azimuthDeg: number; altitudeDeg: number; errorArcmin: number };

/** The biggest shortfall as a code; the sentence is written in components/grading. */
export type RunAdvice =
  | { code: 'well-done' }
  | { code: 'sun'; distanceDeg: number }
  | { code: 'start-position'; azimuthErrorDeg: number; altitudeErrorDeg: number }
  | { code: 'start-by-compass'; declinationDeg: number }
  | { code: 'planet-for-star'; which: 1 | 2; planet: string; name: string }
  | { code: 'wrong-star'; which: 1 | 2; reallyName: string; name: string; separationDeg: number }
  | { code: 'empty-field'; which: 1 | 2; name: string; offsetArcmin: number }
  | { code: 'off-centre'; which: 1 | 2; offsetArcmin: number; shareOfRadius: number }
  | { code: 'final-approach'; which: 1 | 2; backlashArcmin: number }
  | { code: 'pair'; hitRate: number; bestHitRate: number }
  | { code: 'trusted-a-bad-one'; hitRate: number }
  | { code: 'doubted-a-good-one'; hitRate: number }
  | { code: 'slow'; minutes: number; minutesAllowed: number };

export type RunResult = {
  lab: 'alignment-run';
  graderVersion: number;
  template: RunTemplate;
  /** 0–100, not rounded, whatever the gates say. */
  total: number;
  criteria: readonly RunCriterion[];
  /** A failed gate means "not yet", whatever the score. */
  gates: readonly { id: 'sun'; atMs: number; distanceDeg: number }[];
  start: { azimuthErrorDeg: number; altitudeErrorDeg: number; declinationDeg: number };
  stars: readonly RunStarResult[];
  outcome: AlignmentOutcome | null;
  /** The worth of the pair that was meant, and of the best that the task allowed. */
  pair: { chosen: PairFigures | null; best: PairFigures | null };
  /** Share of go-tos in the observing eyepiece: achieved, and of a perfect operator on the same stars. */
  achievedHitRate: number | null;
  perfectHitRate: number | null;
  achieved: readonly AchievedCell[];
  third: {
    hip: number;
    name: string;
    missArcmin: number;
    inField: boolean;
    fieldRadiusArcmin: number;
  } | null;
  judgement: { trusted: boolean; deserved: 'trust' | 'doubt' | 'either' } | null;
  minutes: number;
  advice: RunAdvice;
};
