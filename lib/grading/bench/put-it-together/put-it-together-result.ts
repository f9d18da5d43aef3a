import type { HazardMoment, Sight } from '../../../assembly/hazards';
import type { AssemblyStep } from '../../../assembly/steps';
import type { PutItTogetherTemplate } from '../../../variants/bench/put-it-together/put-it-together-variant';
import type { BenchResult } from '../bench-result';

export type PutItTogetherCriterion = 'order' | 'complete' | 'unfolding' | 'lifting' | 'finishing';

export type PutItTogetherGate = {
  /** Tube let go that nothing held; a load on what could not bear it; glass open to the Sun. */
  id: 'tube-fell' | 'tipped-over' | 'caps-off-by-day';
};

export type PutItTogetherSlip =
  /** A step before the one that it rests on. */
  | { code: 'too-early'; before: AssemblyStep; after: AssemblyStep }
  /** What somebody had left out was left out for longer. */
  | { code: 'left-undone'; step: AssemblyStep }
  | { code: 'missing'; step: AssemblyStep }
  | { code: 'stray'; step: AssemblyStep }
  | { code: 'hazard-missed'; moment: HazardMoment; sight: Sight }
  | { code: 'not-a-hazard'; moment: HazardMoment; sight: Sight };

export type PutItTogetherResult = BenchResult<
  'put-it-together',
  PutItTogetherTemplate,
  PutItTogetherCriterion,
  PutItTogetherGate,
  PutItTogetherSlip
> & {
  /** For the picture. */
  order: readonly AssemblyStep[];
};
