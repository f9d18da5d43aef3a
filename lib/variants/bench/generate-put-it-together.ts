import { randomFrom } from '../random';
import type { BenchTaskInput } from './bench-variant';
import type { PutItTogetherTemplate, PutItTogetherVariant } from './put-it-together-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

export function generatePutItTogether({
  seed,
  templates,
  kit,
}: BenchTaskInput<PutItTogetherTemplate>): PutItTogetherVariant {
  const template = randomFrom(seed).pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  return { lab: 'put-it-together', template, generatorVersion, kitName: kit.name };
}
