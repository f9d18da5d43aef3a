import { randomFrom } from '../random';
import type { BenchTaskInput } from './bench-variant';
import type { DressRehearsalTemplate, DressRehearsalVariant } from './dress-rehearsal-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

export function generateDressRehearsal({
  seed,
  templates,
  kit,
}: BenchTaskInput<DressRehearsalTemplate>): DressRehearsalVariant {
  const template = randomFrom(seed).pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  return { lab: 'dress-rehearsal', template, generatorVersion, kitName: kit.name };
}
