import { randomFrom } from '../random';
import type { BenchTaskInput } from './bench-variant';
import type { LevelTemplate, LevelVariant } from './level-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

export function generateLevel({
  seed,
  templates,
  kit,
}: BenchTaskInput<LevelTemplate>): LevelVariant {
  const template = randomFrom(seed).pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  return { lab: 'level', template, generatorVersion, kitName: kit.name };
}
