import { randomFrom } from '../random';
import type { BenchTaskInput } from './bench-variant';
import type { ClockAndPlaceTemplate, ClockAndPlaceVariant } from './clock-and-place-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

export function generateClockAndPlace({
  seed,
  templates,
  kit,
}: BenchTaskInput<ClockAndPlaceTemplate>): ClockAndPlaceVariant {
  const template = randomFrom(seed).pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  return { lab: 'clock-and-place', template, generatorVersion, kitName: kit.name };
}
