import { benchKitFor } from '@/lib/data/lab-tasks/bench/bench-kit-for';
import {
  clockAndPlaceTemplates,
  type ClockAndPlaceTemplate,
  type ClockAndPlaceVariant,
} from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import { generateClockAndPlace } from '@/lib/variants/bench/clock-and-place/generate-clock-and-place';
import { eveningScenario } from './evening';

/** East and west, north and south, near Greenwich, with and without summer time, by night and by day. */
const scenarios = [
  {},
  {
    place: { latitudeDeg: 50.11, longitudeDeg: 8.68, elevationM: 100 },
    localTime: '2026-08-14T22:30',
    timeZone: 'Europe/Berlin',
  },
  {
    place: { latitudeDeg: 51.5, longitudeDeg: -0.1, elevationM: 20 },
    localTime: '2026-03-12T20:00',
    timeZone: 'Europe/London',
  },
  {
    place: { latitudeDeg: 27.7, longitudeDeg: 85.3, elevationM: 1400 },
    localTime: '2026-11-20T19:15',
    timeZone: 'Asia/Kathmandu',
  },
  {
    place: { latitudeDeg: -33.87, longitudeDeg: 151.2, elevationM: 20 },
    localTime: '2027-01-09T21:45',
    timeZone: 'Australia/Sydney',
  },
  {
    place: { latitudeDeg: 69.65, longitudeDeg: 18.96, elevationM: 5 },
    localTime: '2026-06-21T23:50',
    timeZone: 'Europe/Oslo',
  },
  {
    place: { latitudeDeg: -1.28, longitudeDeg: 36.8, elevationM: 1700 },
    localTime: '2030-05-31T00:20',
    timeZone: 'Africa/Nairobi',
  },
];
const kits = ['wren', 'heron', 'owl'] as const;

/** One task as a student would get it, at one of the sites. */
export function clockTask(
  seed: string,
  template: ClockAndPlaceTemplate,
  index = 0,
): ClockAndPlaceVariant {
  const scenario = eveningScenario(scenarios[index % scenarios.length]);
  return generateClockAndPlace({
    seed,
    scenario,
    windowMinutes: 40,
    templates: [template],
    kit: benchKitFor(kits[index % kits.length] ?? null, scenario),
  });
}

/** So many of each template, at every site and with every kit in turn. */
export const manyClockTasks = (
  perTemplate: number,
  templates: readonly ClockAndPlaceTemplate[] = clockAndPlaceTemplates,
): ClockAndPlaceVariant[] =>
  templates.flatMap((template) =>
    Array.from({ length: perTemplate }, (_, index) =>
      clockTask(`many ${template} ${String(index)}`, template, index),
    ),
  );
