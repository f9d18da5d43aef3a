import { randomFrom } from '../random';
import type { BenchTaskInput } from './bench-variant';
import type { FinderTemplate, FinderVariant } from './finder-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

export function generateFinder({
  seed,
  templates,
  kit,
}: BenchTaskInput<FinderTemplate>): FinderVariant {
  const template = randomFrom(seed).pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  return { lab: 'finder', template, generatorVersion, kitName: kit.name };
}
