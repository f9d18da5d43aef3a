import { benchKitFor } from '@/lib/data/lab-tasks/bench/bench-kit-for';
import { loadKits } from '@/lib/content/sky-catalogue';
import { scenarioSchema, type Scenario } from '@/lib/pointing/scenario';
import type { FinderTemplate, FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { generateFinder } from '@/lib/variants/bench/finder/generate-finder';

const kitIds = ['wren', 'heron', 'owl'] as const;

/** An evening in the middle of the northern half, with one of the kits. */
export function finderScenario(
  kitId: (typeof kitIds)[number],
  localTime = '2026-10-09T20:30',
): Scenario {
  const kit = loadKits().find(({ id }) => id === kitId);
  const [eyepiece] = kit?.eyepieces ?? [];
  if (kit === undefined || eyepiece === undefined) throw new Error(`no kit ${kitId}`);
  const { focalLengthMm, apparentFieldDeg } = eyepiece;
  return scenarioSchema.parse({
    place: { latitudeDeg: 53.8, longitudeDeg: -1.7, elevationM: 120 },
    localTime,
    timeZone: 'Europe/London',
    telescope: kit.telescope,
    eyepiece: { focalLengthMm, apparentFieldDeg },
  });
}

/** Random tasks of these kinds, over the year and the kits. */
export const finderTasks = ({
  templates,
  count,
  name,
}: {
  templates: readonly FinderTemplate[];
  count: number;
  name: string;
}): FinderVariant[] =>
  Array.from({ length: count }, (_, i) => {
    const kitId = kitIds[i % 3] ?? 'wren';
    const month = String((i % 12) + 1).padStart(2, '0');
    const scenario = finderScenario(
      kitId,
      `2027-${month}-${String((i % 27) + 1).padStart(2, '0')}T21:00`,
    );
    return generateFinder({
      seed: `${name} ${String(i)}`,
      scenario,
      templates,
      windowMinutes: 40,
      kit: benchKitFor(kitId, scenario),
    });
  });
