import { benchKitFor } from '@/lib/data/lab-tasks/bench/bench-kit-for';
import type { BenchTaskInput } from '@/lib/variants/bench/bench-variant';
import { eveningScenario } from './evening';

const kits = ['wren', 'heron', 'owl'] as const;

/** So many tasks of each template, with each kit in turn, as students would get them. */
export function manyBenchTasks<T extends string, V>(
  generate: (input: BenchTaskInput<T>) => V,
  templates: readonly T[],
  perTemplate: number,
): V[] {
  const scenario = eveningScenario();
  return templates.flatMap((template) =>
    Array.from({ length: perTemplate }, (_, index) =>
      generate({
        seed: `many ${template} ${String(index)}`,
        scenario,
        windowMinutes: 40,
        templates: [template],
        kit: benchKitFor(kits[index % kits.length] ?? null, scenario),
      }),
    ),
  );
}
