import type { ItemAnswer } from '@/lib/items/item-answer';
import type { ItemFace } from '@/lib/items/item-face';

type AnswerOf<Kind extends ItemFace['kind']> = Extract<ItemAnswer, { kind: Kind }>;
export type FaceOf<Kind extends ItemFace['kind']> = Extract<ItemFace, { kind: Kind }>;

/** One way of answering: what is asked, the answer so far, and what to do with a new one. */
export type AnswerFieldsProps<Kind extends ItemFace['kind']> = {
  face: FaceOf<Kind>;
  answer: AnswerOf<Kind>;
  onAnswer: (answer: AnswerOf<Kind>) => void;
  /** Sets the fields of one question apart from those of others on the page. */
  name: string;
  disabled: boolean;
};

/** A question that nothing was done with yet. Steps stand as they were dealt. */
export function emptyAnswer(face: ItemFace): ItemAnswer {
  switch (face.kind) {
    case 'choice':
    case 'point':
      return { kind: face.kind, option: null };
    case 'several':
      return { kind: 'several', options: [] };
    case 'order':
      return { kind: 'order', steps: face.steps.map(({ id }) => id) };
    case 'match':
      return { kind: 'match', pairs: {} };
    case 'numeric':
      return { kind: 'numeric', text: '' };
  }
}

/** The steps with one of them a place earlier (−1) or later (1); as they were at either end. */
export function moved(steps: readonly string[], id: string, by: -1 | 1): string[] {
  const from = steps.indexOf(id);
  const to = from + by;
  const other = steps[to];
  if (from < 0 || other === undefined) return [...steps];
  return steps.map((step, index) => (index === from ? other : index === to ? id : step));
}

/** No figures: beside "6 mm from the middle" they would read as part of it. */
const alphabets = ['ABCDEFGHIJ', 'PQRSTUVWXY', 'KLMNPQRSTU'];

/** What the rings are called: by letters, unless the drawing itself has one of them written on it. */
export function ringNames({ drawing, spots }: FaceOf<'point'>): ReadonlyMap<string, string> {
  const written = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
  const free = alphabets.filter((names) =>
    spots.every((_, index) => {
      const name = names[index];
      return name !== undefined && !written.includes(name);
    }),
  );
  const names = free[0] ?? alphabets[0];
  return new Map(spots.map(({ id }, index) => [id, names?.[index] ?? id.toUpperCase()]));
}
