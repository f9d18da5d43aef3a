import type { Bay, BayEnd } from '../power/holder';
import type { ItemDrawing, Shape } from './drawing';

/** Bays stand upright beside each other; the first on the left. */
const top = 14;
const height = 116;
/** The spring and the bare contact at the two ends of a bay. */
const springHeight = 18;

/** The middle of a bay, for a spot to point at. */
export const bayMiddle = (bay: number, of: number): { x: number; y: number } => ({
  x: (320 / of) * (bay + 0.5),
  y: top + height / 2,
});

const endY = (end: BayEnd): number => (end === 'top' ? top : top + height);

function bayShapes({ springEnd, put }: Bay, x: number, wide: number): Shape[] {
  const inward = springEnd === 'top' ? 1 : -1;
  const from = endY(springEnd) + 3 * inward;
  const turns = [0, 1, 2, 3, 4, 5].map(
    (turn) =>
      `${turn === 0 ? 'M' : 'L'}${(x + (turn % 2 === 0 ? -7 : 7)).toFixed(1)} ${String(from + 2.4 * turn * inward)}`,
  );
  const shapes: Shape[] = [
    {
      kind: 'rect',
      x: x - wide / 2,
      y: top,
      w: wide,
      h: height,
      round: 4,
      fill: 'sunken',
      stroke: 'line',
      width: 1.5,
    },
    { kind: 'path', d: turns.join(' '), stroke: 'ink', width: 1.8 },
  ];
  if (put === null) return shapes;
  const upper = top + (springEnd === 'top' ? springHeight : 8);
  const lower = top + height - (springEnd === 'bottom' ? springHeight : 8);
  const body = wide - 8;
  const plusUp = put.plusEnd === 'top';
  return [
    ...shapes,
    {
      kind: 'rect',
      x: x - 5,
      y: plusUp ? upper : lower - 5,
      w: 10,
      h: 5,
      fill: 'ink',
    },
    {
      kind: 'rect',
      x: x - body / 2,
      y: upper + (plusUp ? 5 : 0),
      w: body,
      h: lower - upper - 5,
      round: 3,
      fill: 'panel',
      stroke: 'ink',
      width: 1.5,
    },
    {
      kind: 'text',
      x,
      y: upper + 22,
      text: plusUp ? '+' : '−',
      size: 18,
      anchor: 'middle',
      bold: true,
    },
    {
      kind: 'text',
      x,
      y: lower - 9,
      text: plusUp ? '−' : '+',
      size: 18,
      anchor: 'middle',
      bold: true,
    },
  ];
}

/** Bays 1 to n from the left, each with its spring and its cell. */
export function holderShapes(bays: readonly Bay[]): Shape[] {
  const wide = Math.min(44, 320 / bays.length - 6);
  return bays.flatMap((bay, i): Shape[] => {
    const { x } = bayMiddle(i, bays.length);
    return [
      ...bayShapes(bay, x, wide),
      {
        kind: 'text',
        x,
        y: top + height + 17,
        text: String(i + 1),
        anchor: 'middle',
        tone: 'soft',
      },
    ];
  });
}

const at: Readonly<Record<BayEnd, string>> = { top: 'at the top', bottom: 'at the bottom' };

/** Each bay in words: where its spring is and where the plus end of its cell. */
export const holderInWords = (bays: readonly Bay[]): string =>
  bays
    .map(({ springEnd, put }, i) => {
      const cell = put === null ? 'no cell' : `the cell’s plus end ${at[put.plusEnd]}`;
      return `Bay ${String(i + 1)}: spring ${at[springEnd]}, ${cell}.`;
    })
    .join(' ');

export const drawHolder = (bays: readonly Bay[]): ItemDrawing => ({
  width: 320,
  height: 154,
  alternative: `A holder seen from above, its bays beside each other. ${holderInWords(bays)}`,
  shapes: holderShapes(bays),
});
