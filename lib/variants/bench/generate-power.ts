import { randomFrom } from '../random';
import type { BenchTaskInput } from './bench-variant';
import type { PowerTemplate, PowerVariant } from './power-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

export function generatePower({
  seed,
  templates,
  kit,
}: BenchTaskInput<PowerTemplate>): PowerVariant {
  const template = randomFrom(seed).pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  return { lab: 'power', template, generatorVersion, kitName: kit.name };
}
