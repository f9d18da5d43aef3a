import { benchKitFor } from '@/lib/data/lab-tasks/bench/bench-kit-for';
import {
  balanceTemplates,
  type BalanceTemplate,
  type BalanceVariant,
} from '@/lib/variants/bench/balance/balance-variant';
import { generateBalance } from '@/lib/variants/bench/balance/generate-balance';
import { manyBenchTasks } from './bench-tasks';
import { eveningScenario } from './evening';

export const balanceKits = ['wren', 'heron', 'owl'] as const;

/** A task of "Balance" as a student gets it, from any text as its seed. */
export function balanceTask(
  seed: string,
  template: BalanceTemplate,
  kitId: (typeof balanceKits)[number] = 'wren',
): BalanceVariant {
  const scenario = eveningScenario();
  return generateBalance({
    seed,
    scenario,
    templates: [template],
    windowMinutes: 40,
    kit: benchKitFor(kitId, scenario),
  });
}

/** So many tasks of each template, with each kit in turn. */
export const manyBalanceTasks = (perTemplate: number): BalanceVariant[] =>
  manyBenchTasks(generateBalance, balanceTemplates, perTemplate);
