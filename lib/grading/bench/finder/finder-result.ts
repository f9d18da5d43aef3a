import type { DayHazard } from '../../../finder/day-hazard';
import type { AzAlt } from '../../../finder/way-past-sun';
import type { FieldOffset } from '../../../optics/image-orientation';
import type { FinderTemplate } from '../../../variants/bench/finder/finder-variant';
import type { BenchResult } from '../bench-result';

export const finderCriteria = [
  'target',
  'day',
  'centring',
  'dot',
  'residual',
  'size',
  'direction',
  'fields',
  'cause',
  'steps',
] as const;
export type FinderCriterion = (typeof finderCriteria)[number];

/** A failed gate: what must not happen by day, and the worst of it. */
export type FinderGate = DayHazard;

/** What went wrong, with its size. Angles beside the tube in arcminutes. */
export type FinderSlip =
  | { code: 'near-target'; name: string; distanceM: number; parallaxArcmin: number }
  | { code: 'nearer-than-needed'; name: string; distanceM: number; betterName: string }
  | { code: 'target-by-the-sun'; name: string; fromSunDeg: number }
  | { code: 'not-centred'; name: string; offArcmin: number; fieldRadiusArcmin: number }
  | { code: 'dot-beside-target'; name: string; gapArcmin: number }
  | { code: 'tube-moved-to-the-dot'; name: string; offArcmin: number }
  | { code: 'high-power-first'; lowRadiusArcmin: number; highRadiusArcmin: number }
  | { code: 'not-checked-in-high-power' }
  | { code: 'locked-under-the-cap' }
  | { code: 'day-left-out' }
  | { code: 'not-refined' }
  | { code: 'size-misjudged'; saidArcmin: number; reallyArcmin: number }
  | { code: 'wrong-side'; saidHour: number; reallyHour: number }
  | { code: 'not-as-the-eyepiece-shows'; saidHour: number; reallyHour: number }
  | { code: 'direction-misjudged'; saidHour: number; reallyHour: number }
  | {
      code: 'field-misjudged';
      eyepieceMm: number;
      radiusArcmin: number;
      reallyArcmin: number;
      /** Inside the whole field's width, but not its half. */
      tookTheWholeField: boolean;
    }
  | {
      code: 'cause-misjudged';
      saidM: number;
      reallyM: number;
      saidArcmin: number;
      reallyArcmin: number;
    };

/** What a residual is made of: each part's length along it; they sum to it. Arcminutes. */
export type ResidualShares = { distance: number; centring: number; dot: number };

export type FinderResult = BenchResult<
  'finder',
  FinderTemplate,
  FinderCriterion,
  FinderGate,
  FinderSlip
> & {
  /** What it was set on last. */
  target: { id: string; name: string; distanceM: number | null };
  /** Where the dot points beside the tube when all is done: what is left at infinity. */
  dot: FieldOffset;
  shares: ResidualShares;
  /** Null where the target was behind the tube. */
  offCentre: FieldOffset | null;
  /** In the eyepiece: where a star under the dot sits, where that was asked for. */
  starInEyepiece: FieldOffset | null;
  /** The tube's way, piece by piece; a piece is open or capped. */
  ways: readonly { open: boolean; byDay: boolean; from: AzAlt; to: AzAlt }[];
};
