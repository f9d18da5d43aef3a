import type { ItemDrawing, Shape } from '../../drawings/drawing';

/** Arcminutes a square of the finder's window is wide, and its drawing's units a square. */
export const squareArcmin = 6;
const squareWidth = 24;
export const windowMiddle = { x: 160, y: 120 } as const;

export const windowPlace = ({ right, up }: { right: number; up: number }) => ({
  x: windowMiddle.x + squareWidth * right,
  y: windowMiddle.y - squareWidth * up,
});

type Square = { right: number; up: number };

/** The finder's window, the target in its middle, squares to count. Places in squares. */
export function windowDrawing(
  alternative: string,
  { dot, empty = [] }: { dot?: Square; empty?: readonly Square[] },
): ItemDrawing {
  const lines = [-4, -3, -2, -1, 0, 1, 2, 3, 4].flatMap((i): Shape[] => [
    {
      kind: 'line',
      x1: 160 + squareWidth * i,
      x2: 160 + squareWidth * i,
      y1: 24,
      y2: 216,
      stroke: 'sky-line',
      width: 0.6,
    },
    {
      kind: 'line',
      y1: 120 + squareWidth * i,
      y2: 120 + squareWidth * i,
      x1: 64,
      x2: 256,
      stroke: 'sky-line',
      width: 0.6,
    },
  ]);
  return {
    width: 320,
    height: 240,
    alternative,
    shapes: [
      { kind: 'rect', x: 64, y: 24, w: 192, h: 192, round: 10, fill: 'sky', stroke: 'strong' },
      ...lines,
      { kind: 'path', d: 'M153 132 L160 96 L167 132 Z', fill: 'on-sky-soft', stroke: 'on-sky' },
      ...(dot === undefined
        ? []
        : [
            {
              kind: 'circle' as const,
              cx: windowPlace(dot).x,
              cy: windowPlace(dot).y,
              r: 6,
              fill: 'sky-lamp' as const,
              stroke: 'sky' as const,
            },
          ]),
      ...empty.map((square): Shape => {
        const { x, y } = windowPlace(square);
        return { kind: 'circle', cx: x, cy: y, r: 11, stroke: 'on-sky', width: 1.5, dashed: true };
      }),
    ],
  };
}

/** "2 squares to the right and 1 square above" */
export function squaresInWords({ right, up }: Square): string {
  const count = (value: number) =>
    `${String(Math.abs(value))} ${Math.abs(value) === 1 ? 'square' : 'squares'}`;
  const parts = [
    ...(right === 0 ? [] : [`${count(right)} to the ${right > 0 ? 'right' : 'left'} of it`]),
    ...(up === 0 ? [] : [`${count(up)} ${up > 0 ? 'above' : 'below'} it`]),
  ];
  return parts.length === 0 ? 'on it' : parts.join(' and ');
}
