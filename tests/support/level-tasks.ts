import { benchKitFor } from '@/lib/data/lab-tasks/bench/bench-kit-for';
import { generateLevel } from '@/lib/variants/bench/generate-level';
import {
  levelTemplates,
  type LevelTemplate,
  type LevelVariant,
} from '@/lib/variants/bench/level-variant';
import { eveningScenario } from './evening';

const kits = ['wren', 'heron', 'owl'] as const;

/** One task of a kind; the same seed gives the same. */
export function levelTask(
  seed: string,
  template: LevelTemplate,
  kitId: (typeof kits)[number] = 'wren',
): LevelVariant {
  const scenario = eveningScenario();
  const kit = benchKitFor(kitId, scenario);
  return generateLevel({ seed, scenario, templates: [template], windowMinutes: 40, kit });
}

/** So many tasks of each kind, on the three telescopes in turn. */
export const manyLevelTasks = (ofEach: number): LevelVariant[] =>
  levelTemplates.flatMap((template) =>
    Array.from({ length: ofEach }, (_, i) =>
      levelTask(`task ${String(i)}`, template, kits[i % kits.length]),
    ),
  );
