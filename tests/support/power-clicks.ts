import { powerLimits, type PowerSubmission } from '@/lib/grading/bench/power/power-submission';
import { act } from '@/lib/power/act';
import { bayEnds } from '@/lib/power/holder';
import { powerPlans } from '@/lib/power/night';
import { benchAtStart, holderPlug, type PowerAction } from '@/lib/power/power-bench';
import { supplyVerdicts, type SupplyVerdict } from '@/lib/power/supply';
import { isWired, type PowerVariant } from '@/lib/variants/bench/power/power-variant';
import type { Random } from '@/lib/variants/random';

/** Anything that can be done, sixty times over, and any answer. */
export function clickedAtRandom(variant: PowerVariant, random: Random): PowerSubmission {
  const { setup } = variant;
  const actions: PowerAction[] = [];
  let bench = benchAtStart(setup);
  for (let click = 0; isWired(variant) && click < 60; click++) {
    const action = anyAction(variant, random);
    const acted = act(setup, bench, action);
    if (acted === null) continue;
    bench = acted.bench;
    actions.push(action);
  }
  return {
    actions,
    reversedCount: random.integer(0, 8),
    verdicts: Object.fromEntries(
      setup.supplies.map(({ id }) => [id, random.pick<SupplyVerdict>(supplyVerdicts) ?? 'fits']),
    ),
    meanMilliamperes: random.between(0, powerLimits.milliamperes),
    runTimeHours: random.between(0, powerLimits.hours),
    slewingVolts: random.between(0, powerLimits.volts),
    resets: random.next() < 0.5,
    plan: random.pick(powerPlans) ?? 'go',
  };
}

function anyAction({ setup }: PowerVariant, random: Random): PowerAction {
  const bay = random.integer(0, 7);
  const plugs = [
    ...setup.supplies.map(({ id }) => id),
    ...(setup.springEnds.length ? [holderPlug] : []),
  ];
  const actions: PowerAction[] = [
    {
      do: 'put',
      cell: random.pick(setup.cells)?.id ?? 'A',
      bay,
      plusEnd: random.pick(bayEnds) ?? 'top',
    },
    { do: 'take', bay },
    { do: 'turn', bay },
    { do: 'plug', supply: random.pick(plugs) ?? holderPlug },
    { do: 'unplug' },
    { do: 'hand-control', connected: random.next() < 0.7 },
    { do: 'switch', on: random.next() < 0.6 },
    { do: 'slew' },
    { do: 'read', red: random.integer(0, 8), black: random.integer(0, 8) },
  ];
  return random.pick(actions) ?? { do: 'slew' };
}
