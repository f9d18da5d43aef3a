import type { ItemAnswer } from './item-answer';
import type { ItemFace } from './item-face';

/** What somebody answered, as they would say it; an answer of another kind than the question's is none. */
export function answerInWords(face: ItemFace, answer: ItemAnswer): string {
  switch (face.kind) {
    case 'choice':
      return answer.kind === 'choice' ? textOf(face.options, answer.option) : nothing;
    case 'several':
      return answer.kind === 'several' ? listed(face.options, answer.options, '; ') : nothing;
    case 'order':
      return answer.kind === 'order' ? listed(face.steps, answer.steps, ' → ') : nothing;
    case 'match':
      return answer.kind === 'match'
        ? face.left
            .map(({ id, text }) => `${text} – ${textOf(face.right, answer.pairs[id] ?? null)}`)
            .join('; ')
        : nothing;
    case 'numeric':
      return answer.kind === 'numeric' ? withUnit(answer.text.trim(), face.unit) : nothing;
    case 'point': {
      const spots = face.spots.map(({ id, where }) => ({ id, text: where }));
      return answer.kind === 'point' ? textOf(spots, answer.option) : nothing;
    }
  }
}

const nothing = 'nothing';
type Lettered = { id: string; text: string };

const textOf = (things: readonly Lettered[], id: string | null): string =>
  things.find((thing) => thing.id === id)?.text ?? nothing;

const listed = (things: readonly Lettered[], ids: readonly string[], between: string): string =>
  ids.length === 0 ? nothing : ids.map((id) => textOf(things, id)).join(between);

/** The unit behind a bare number; whoever typed a unit of their own is quoted as they wrote. */
const withUnit = (typed: string, unit: string): string =>
  /^[+−-]?[\d.,]+$/.test(typed) ? `${typed} ${unit}` : typed;
