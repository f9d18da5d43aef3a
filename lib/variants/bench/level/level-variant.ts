import type { TripodSite } from '../../../levelling/tripod';
import type { SkyPlace } from '../../../levelling/tilt-consequences';
import type { TubeType } from '../../../optics/image-orientation';
import type { BenchVariant } from '../bench-variant';

export const levelTemplates = [
  /** Firm ground that falls one way: work in the bubble's own direction. */
  'one-slope',
  /** One foot stands on soft ground and goes in when weight comes on it. */
  'soft-foot',
  /** The leg that the bubble asks for is at its end: the others must do the work. */
  'leg-at-its-end',
  /** The vial sits on the arm and is looked at with the head turned. */
  'turned-vial',
  /** The vial is out of adjustment: half of what the bubble does in a half-turn is its own. */
  'untrue-vial',
  /** The vial cannot be seen while a leg is open: read, reckon, move once. */
  'read-then-move',
] as const;
export type LevelTemplate = (typeof levelTemplates)[number];

/**
 * "How level is level enough?", asked of one tilt: what it does to a first slew, what is left of it after
 * an alignment on two stars, and what a computer keeps that takes the base as level. Answers to choose
 * among are in arcminutes; a height that is too high is positive.
 */
export type TiltQuestion = {
  tiltDeg: number;
  risesTowardsDeg: number;
  first: SkyPlace;
  second: SkyPlace;
  firstSlewUpArcmin: readonly number[];
  /** Anywhere on the sky, at worst. */
  afterTwoStarsArcmin: readonly number[];
  /** Set right on the first star, how high it lands on the second. */
  takenAsLevelUpArcmin: readonly number[];
};

/** One student's "Level". */
export type LevelVariant = BenchVariant<'level', LevelTemplate> & {
  /** What stands on the tripod in the end, for the drawing. */
  tubeType: TubeType;
  site: TripodSite;
  question: TiltQuestion;
};
