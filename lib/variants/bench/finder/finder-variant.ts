import type { Adjusters } from '../../../finder/adjusters';
import type { WhichEyepiece } from '../../../finder/setting';
import type { FinderPlace } from '../../../finder/sights';
import type { AzAlt } from '../../../finder/way-past-sun';
import type { FieldOffset, ImageOrientation, TubeType } from '../../../optics/image-orientation';
import type { BenchVariant } from '../bench-variant';

export const finderTemplates = [
  /** Things near and far, some of them by the Sun: choose, set, lock. */
  'free-target',
  /** Every far thing stands by the Sun: take one at middle distance, or wait for dusk. */
  'far-ones-by-the-sun',
  /** Only near things by day; refine at dusk. */
  'day-then-dusk',
  /** Set on a near thing, then say where a star will sit in the eyepiece. */
  'near-then-predict',
  /** Somebody set it on something near: find out how far off, on what, and put it right at dusk. */
  'set-by-another',
] as const;
export type FinderTemplate = (typeof finderTemplates)[number];

export const dayTargetKinds = [
  'fence-post',
  'tree-trunk',
  'chimney',
  'mast',
  'spire',
  'hill-tower',
] as const;
export type DayTargetKind = (typeof dayTargetKinds)[number];

/** A thing of the daytime scene; its place is that of the point to aim at, from the telescope. */
export type DayTarget = AzAlt & {
  id: string;
  kind: DayTargetKind;
  name: string;
  distanceM: number;
};

/** A light of the evening sky, seen. */
export type DuskLight = AzAlt & {
  id: string;
  kind: 'moon' | 'planet' | 'star';
  name: string;
  magnitude: number;
  /** Half its width; 0 for a point. */
  radiusArcmin: number;
};

export type FinderEyepiece = { focalLengthMm: number; radiusArcmin: number };

/** One student's "Finder". */
export type FinderVariant = BenchVariant<'finder', FinderTemplate> & {
  tubeType: TubeType;
  orientation: ImageOrientation;
  /** Low power shows most of the sky; with one eyepiece only, both are the same. */
  eyepieces: Readonly<Record<WhichEyepiece, FinderEyepiece>>;
  finder: FinderPlace;
  adjusters: Adjusters;
  /** Beside the tube's axis, before anybody turns a screw. */
  dotAtFirst: FieldOffset;
  lockedAtFirst: boolean;
  tubeAtFirst: AzAlt;
  eyepieceAtFirst: WhichEyepiece;
  /** The azimuth in the middle of the scene. */
  middleAzimuthDeg: number;
  /** How many days after the scenario's date: where the Sun does not rise and set on it. */
  daysLater: number;
  day: { localTime: string; sun: AzAlt; targets: readonly DayTarget[] } | null;
  dusk: { localTime: string; lights: readonly DuskLight[] } | null;
  /** The task gives the target. */
  givenTargetId: string | null;
  /** By how much a hand that sights along the tube misses, for each target and light. */
  landings: Readonly<Record<string, FieldOffset>>;
  /** What another set it on, and what a learner may take it for, ascending; metres. */
  setOnBefore: { distanceM: number; optionsM: readonly number[] } | null;
};
