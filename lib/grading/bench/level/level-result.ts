import type { Tilt } from '../../../levelling/head-slope';
import type { TiltConsequences } from '../../../levelling/tilt-consequences';
import type { LegIndex } from '../../../levelling/tripod';
import type { LevelTemplate } from '../../../variants/bench/level/level-variant';
import type { BenchResult } from '../bench-result';

export type LevelCriterion = 'tilt' | 'first-leg' | 'moves' | 'how-level';

/** A leg's lock was open with the tube on and nobody holding it: the leg runs in, the telescope goes over. */
export type LevelGate = { id: 'leg-left-open'; leg: LegIndex };

export type LegWay = 'out' | 'in';

export type LevelSlip =
  /** The one leg to move and by how much (out is positive) would do most about what is left. */
  | { code: 'left-tilted'; tiltDeg: number; risesTowardsDeg: number; leg: LegIndex; byMm: number }
  /** A foot went in under the tube that could have been trodden in first. */
  | { code: 'sank-under-tube'; leg: LegIndex; sunkMm: number; leansDeg: number; mended: boolean }
  /** The bubble stands in the ring and the head leans by what the vial is out. */
  | { code: 'trusted-untrue-vial'; tiltDeg: number; armWasTurned: boolean }
  /** The bubble shows the high side; the leg went the other way. */
  | { code: 'wrong-way'; leg: LegIndex; way: LegWay; beforeDeg: number; afterDeg: number }
  /** A bubble read as if the vial's mark pointed away from the reader. */
  | { code: 'head-not-turned'; leg: LegIndex; bestLeg: LegIndex; markAzimuthDeg: number }
  | {
      code: 'other-leg-first';
      leg: LegIndex;
      bestLeg: LegIndex;
      bestWay: LegWay;
      leavesDeg: number;
      couldLeaveDeg: number;
    }
  | { code: 'more-moves'; moves: number; fewest: number }
  | { code: 'first-slew'; chosenArcmin: number; rightArcmin: number }
  | { code: 'after-two-stars'; chosenArcmin: number }
  | { code: 'taken-as-level'; chosenArcmin: number; rightArcmin: number };

export type LevelResult = BenchResult<
  'level',
  LevelTemplate,
  LevelCriterion,
  LevelGate,
  LevelSlip
> & {
  /** As it was found, and as the tube was left standing on it. */
  found: Tilt;
  left: Tilt;
  legsMm: readonly [number, number, number];
  armTurned: boolean;
  moves: number;
  fewest: number;
  /** What the tilt that was left does to pointing, at worst; set on the question's two stars. */
  leftCosts: TiltConsequences;
};
