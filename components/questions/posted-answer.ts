import type { ItemAnswer } from '@/lib/items/item-answer';
import { itemAnswerSchema } from '@/lib/items/item-answer';
import type { ItemFace } from '@/lib/items/item-face';
import { moved } from './answers';

/**
 * The answer in a question's posted form, whose fields are called as in the fields' own files. Null when
 * it cannot be read. `moved`: a step was to be shifted, which a page without script asks of the server.
 */
export function postedAnswer(
  kind: ItemFace['kind'],
  form: FormData,
  name: string,
): { answer: ItemAnswer; moved: boolean } | null {
  const texts = (field: string) =>
    form.getAll(field).filter((value): value is string => typeof value === 'string');
  const [first] = texts(name);
  const asked = (): unknown => {
    switch (kind) {
      case 'choice':
      case 'point':
        return { kind, option: first ?? null };
      case 'several':
        return { kind, options: texts(name) };
      case 'order':
        return { kind, steps: texts(name) };
      case 'match':
        return { kind, pairs: pairsIn(form, name) };
      case 'numeric':
        return { kind, text: first ?? '' };
    }
  };
  const parsed = itemAnswerSchema.safeParse(asked());
  if (!parsed.success) return null;
  const [id, way] = texts(`${name}-move`)[0]?.split(' ') ?? [];
  if (parsed.data.kind !== 'order' || id === undefined) {
    return { answer: parsed.data, moved: false };
  }
  const steps = moved(parsed.data.steps, id, way === 'up' ? -1 : 1);
  return { answer: { kind: 'order', steps }, moved: true };
}

function pairsIn(form: FormData, name: string): Record<string, string> {
  const pairs: Record<string, string> = {};
  for (const [field, value] of form) {
    const left = field.startsWith(`${name}-`) ? field.slice(name.length + 1) : '';
    if (/^[a-z]$/.test(left) && typeof value === 'string' && value !== '') pairs[left] = value;
  }
  return pairs;
}
