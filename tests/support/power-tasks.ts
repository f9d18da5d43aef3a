import { benchKitFor } from '@/lib/data/lab-tasks/bench/bench-kit-for';
import { generatePower } from '@/lib/variants/bench/power/generate-power';
import {
  powerTemplates,
  type PowerTemplate,
  type PowerVariant,
} from '@/lib/variants/bench/power/power-variant';
import { eveningScenario } from './evening';

const scenario = eveningScenario();
const kit = benchKitFor('wren', scenario);

/** A task of "Power" as a student gets it, from any text as its seed. */
export const powerTask = (seed: string, template: PowerTemplate): PowerVariant =>
  generatePower({ seed, scenario, templates: [template], windowMinutes: 40, kit });

/** So many tasks of each template. */
export const manyPowerTasks = (perTemplate: number): PowerVariant[] =>
  powerTemplates.flatMap((template) =>
    Array.from({ length: perTemplate }, (_, i) => powerTask(`many-${String(i)}`, template)),
  );
