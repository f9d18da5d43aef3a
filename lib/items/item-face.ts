import type { ItemDrawing } from '../drawings/drawing';
import type { Item } from './item';

type Lettered = { id: string; text: string };
type Asked = { prompt: string; drawing?: ItemDrawing };

/** The side of a question that goes to the page before it is answered: nothing in it tells the answer. */
export type ItemFace =
  | (Asked & { kind: 'choice'; options: readonly Lettered[] })
  | (Asked & { kind: 'several'; options: readonly Lettered[] })
  | (Asked & { kind: 'order'; steps: readonly Lettered[] })
  | (Asked & { kind: 'match'; left: readonly Lettered[]; right: readonly Lettered[] })
  | (Asked & { kind: 'numeric'; unit: string })
  | (Asked & {
      kind: 'point';
      drawing: ItemDrawing;
      spots: readonly { id: string; x: number; y: number; where: string }[];
    });

const lettered = ({ id, text }: Lettered): Lettered => ({ id, text });

export function faceOfItem(item: Item): ItemFace {
  const { prompt, drawing } = item;
  const asked: Asked = drawing === undefined ? { prompt } : { prompt, drawing };
  switch (item.kind) {
    case 'choice':
    case 'several':
      return { ...asked, kind: item.kind, options: item.options.map(lettered) };
    case 'order':
      return { ...asked, kind: item.kind, steps: item.steps.map(lettered) };
    case 'match':
      return {
        ...asked,
        kind: item.kind,
        left: item.left.map(lettered),
        right: item.right.map(lettered),
      };
    case 'numeric':
      return { ...asked, kind: item.kind, unit: item.unit };
    case 'point':
      return {
        ...asked,
        kind: item.kind,
        drawing: item.drawing,
        spots: item.spots.map(({ id, x, y, where }) => ({ id, x, y, where })),
      };
  }
}
