import type { DressRehearsalDraft } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import type { BenchStage } from '@/lib/rehearsal/stages';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { balanceParts } from '../balance/balance-parts';
import type { BenchParts } from '../bench/bench-parts';
import { clockAndPlaceParts } from '../clock-and-place/clock-and-place-parts';
import { finderParts } from '../finder/finder-parts';
import { levelParts } from '../level/level-parts';
import { powerParts } from '../power/power-parts';
import { putItTogetherParts } from '../put-it-together/put-it-together-parts';

/** Empty when a lab's own work is whole. */
const missing = <V, D, S>(parts: BenchParts<V, D, S>, draft: D, variant: V): string =>
  parts.submissionOf(draft, variant) === null ? parts.missing(draft, variant) : '';

/** What a bench is still short of, in its own lab's words. */
export function missingAtBench(
  { benches: drafts }: DressRehearsalDraft,
  { benches: variants }: DressRehearsalVariant,
  stage: BenchStage,
): string {
  switch (stage) {
    case 'put-it-together':
      return missing(putItTogetherParts, drafts[stage], variants[stage]);
    case 'level':
      return missing(levelParts, drafts.level, variants.level);
    case 'balance':
      return missing(balanceParts, drafts.balance, variants.balance);
    case 'finder':
      return missing(finderParts, drafts.finder, variants.finder);
    case 'power':
      return missing(powerParts, drafts.power, variants.power);
    case 'clock-and-place':
      return missing(clockAndPlaceParts, drafts[stage], variants[stage]);
  }
}
