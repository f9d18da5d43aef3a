import type { ClampedTube } from '../../../balance/torque';
import type { Hazard, Moves } from '../../../balance/tube-bench';
import type { BalanceTemplate } from '../../../variants/bench/balance/balance-variant';
import type { BenchResult } from '../bench-result';

export type BalanceCriterion = 'foreseen' | 'reading' | 'holds' | 'reserve' | 'tested' | 'handling';

/** The tube was free to fall: how often, and the worst that came of it. */
export type BalanceGate = { id: Hazard['id']; times: number; outcome: Hazard['outcome'] };

export type BalanceSlip =
  /** The clutch cannot hold it over the range; `end` sinks. `slideMm` is towards the best place. */
  | {
      code: 'creeps';
      end: 'front' | 'back';
      atDeg: number;
      torqueNm: number;
      slideMm: number;
      /** Why: sliding was not enough, or it was tried level only. */
      because: 'off-balance' | 'bar-too-short' | 'balanced-level-only';
    }
  | { code: 'little-reserve'; sparePercent: number; slideMm: number }
  | { code: 'part-missing'; names: readonly string[] }
  | { code: 'foreseen-wrong'; said: Moves; was: Moves }
  | {
      code: 'reading-off';
      saidMm: number;
      wasMm: number;
      /** A known mistake that gives this figure. */
      mistake: 'one-edge' | 'wrong-way' | 'mass-left-out' | 'none';
      edgeMm: number;
    }
  | { code: 'not-tested'; low: boolean; high: boolean }
  | { code: 'swung'; times: number; worstFromDeg: number; worstToDeg: number }
  | { code: 'opened-raised'; times: number; highestDeg: number };

/** What the picture shows: the tube as it was left, and where it would have been best. */
type BalancePicture = {
  left: ClampedTube;
  leftClampMm: number;
  /** Null where no place holds with what is on it. */
  bestClampMm: number | null;
  worstDeg: number;
  worstNm: number;
};

export type BalanceResult = BenchResult<
  'balance',
  BalanceTemplate,
  BalanceCriterion,
  BalanceGate,
  BalanceSlip
> & { picture: BalancePicture };
