import { randomFrom } from '../random';
import type { BenchTaskInput } from './bench-variant';
import type { FieldTemplate, FieldVariant } from './field-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

export function generateField({
  seed,
  templates,
  kit,
}: BenchTaskInput<FieldTemplate>): FieldVariant {
  const template = randomFrom(seed).pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  return { lab: 'field', template, generatorVersion, kitName: kit.name };
}
