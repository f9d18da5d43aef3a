import type { BalanceBench } from '../../../balance/tube-bench';
import type { TubeType } from '../../../optics/image-orientation';
import type { BenchVariant } from '../bench-variant';

/**
 * The kinds of task: bring a tube into balance · a phone joins · the bar is too short for it ·
 * balanced level, not raised · find the balance point of a tube of unknown weights by tipping it.
 */
export const balanceTemplates = [
  'first-balance',
  'phone-joins',
  'short-bar',
  'raised',
  'two-edges',
] as const;
export type BalanceTemplate = (typeof balanceTemplates)[number];

/** One student's "Balance". All places are millimetres on the tape along the tube. */
export type BalanceVariant = BenchVariant<'balance', BalanceTemplate> &
  BalanceBench & {
    tubeType: TubeType;
    /** Where on the tape the tube's front end lies: no two tapes are stuck on alike. */
    frontMm: number;
    tubeLengthMm: number;
    tubeDiameterMm: number;
    /** What is used tonight: without it on the tube, nothing is balanced. */
    needed: readonly string[];
    /** Whether masses and places are told; else the tube has to tell. */
    weightsTold: boolean;
    /** Whether the balance point is asked for in millimetres. */
    asksReading: boolean;
  };
