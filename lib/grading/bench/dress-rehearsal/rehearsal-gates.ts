import { afterAll } from '../../../balance/handle-tube';
import { hazardsAtEnd } from '../../../finder/setting';
import { replay as replayTripod } from '../../../levelling/tripod-actions';
import { replay as replayPower } from '../../../power/act';
import { benchAtStart } from '../../../power/power-bench';
import type { BenchStage } from '../../../rehearsal/stages';
import type { RehearsalBenches } from '../../../variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { balanceGates } from '../balance/balance-gates';
import type { DressRehearsalSubmission } from './dress-rehearsal-submission';
import { replayOf } from '../finder/finder-replay';
import { gatesAfter } from '../put-it-together/grade-put-it-together';
import { powerGates } from '../power/power-result';

/**
 * The gates that failed at each bench, from what was done there and not from its mark: work that was left
 * unfinished has no mark, and what could have hurt somebody has happened all the same.
 */
export function benchGates(
  variants: RehearsalBenches,
  work: DressRehearsalSubmission['benches'],
): Readonly<Record<BenchStage, readonly string[]>> {
  const assembly = variants['put-it-together'];
  const { setup } = variants.power;
  const happened = replayPower(setup, benchAtStart(setup), work.power.actions)?.happened ?? [];
  const finder = replayOf(variants.finder, work.finder.actions);
  const stand = replayTripod(variants.level.site, work.level.actions)?.at(-1);
  const ids = (gates: readonly { id: string }[]) => gates.map(({ id }) => id);
  return {
    'put-it-together': ids(gatesAfter(assembly, work['put-it-together'].order)),
    level: stand === undefined || stand.ranIn === null ? [] : ['leg-left-open'],
    balance: ids(balanceGates(afterAll(variants.balance, work.balance.actions))),
    finder: finder === null ? [] : ids(hazardsAtEnd(finder.state)),
    power: powerGates.filter((id) => happened.some(({ code }) => code === id)),
    'clock-and-place': [],
  };
}
