import type { ItemDrawing, Shape } from '../../drawings/drawing';

/** How a bench was left: what stands connected, and where the switch stands. */
export type LeftBench = { on: boolean; supply: boolean; handControl: boolean; cellsIn: boolean };

export const benchSpots = {
  switch: { x: 194, y: 60, where: 'on the box in the middle, upper part' },
  socket: { x: 92, y: 100, where: 'on the left side of the box' },
  handControl: { x: 228, y: 100, where: 'on the right side of the box' },
  holder: { x: 40, y: 150, where: 'at the lower left' },
} as const;

const plug = (x: number, inPlace: boolean, side: -1 | 1): Shape[] => {
  const at = inPlace ? x : x + 22 * side;
  return [
    { kind: 'rect', x: at - 9, y: 92, w: 18, h: 16, round: 3, fill: 'ink' },
    { kind: 'circle', cx: x, cy: 100, r: 4, fill: inPlace ? 'ink' : 'panel', stroke: 'ink' },
  ];
};

/** The telescope's box with its switch and two sockets, the holder and the hand control. */
export function drawBench({ on, supply, handControl, cellsIn }: LeftBench): ItemDrawing {
  const gap = (inPlace: boolean, x: number, side: -1 | 1) => (inPlace ? x : x + 22 * side);
  return {
    width: 320,
    height: 196,
    alternative: `A telescope’s box. Its switch stands ${on ? 'on' : 'off'}. On the left the supply’s plug is ${supply ? 'in' : 'out'}; on the right the hand control’s plug is ${handControl ? 'in' : 'out'}. At the lower left lies the holder, ${cellsIn ? 'with all its cells in and read on the meter' : 'with one bay still empty'}.`,
    shapes: [
      {
        kind: 'rect',
        x: 104,
        y: 24,
        w: 112,
        h: 110,
        round: 8,
        fill: 'panel',
        stroke: 'ink',
        width: 2,
      },
      { kind: 'text', x: 144, y: 44, text: 'switch', size: 13, anchor: 'middle', tone: 'soft' },
      {
        kind: 'rect',
        x: 116,
        y: 50,
        w: 56,
        h: 20,
        round: 10,
        fill: 'sunken',
        stroke: 'ink',
        width: 1.5,
      },
      { kind: 'circle', cx: on ? 162 : 126, cy: 60, r: 8, fill: 'ink' },
      {
        kind: 'text',
        x: on ? 133 : 155,
        y: 65,
        text: on ? 'on' : 'off',
        size: 12,
        anchor: 'middle',
      },
      ...plug(104, supply, -1),
      ...plug(216, handControl, 1),
      {
        kind: 'path',
        d: `M${String(gap(supply, 104, -1) - 9)} 100 H56 Q40 100 40 124`,
        stroke: 'ink',
        width: 2,
      },
      {
        kind: 'path',
        d: `M${String(gap(handControl, 216, 1) + 9)} 100 H262 Q280 100 280 124`,
        stroke: 'ink',
        width: 2,
      },
      {
        kind: 'rect',
        x: 6,
        y: 124,
        w: 72,
        h: 52,
        round: 4,
        fill: 'sunken',
        stroke: 'ink',
        width: 1.5,
      },
      ...[0, 1, 2, 3].flatMap((bay): Shape[] =>
        bay === 2 && !cellsIn
          ? [
              {
                kind: 'rect',
                x: 11 + 16 * bay,
                y: 130,
                w: 13,
                h: 40,
                round: 2,
                stroke: 'ink',
                dashed: true,
              },
            ]
          : [
              {
                kind: 'rect',
                x: 11 + 16 * bay,
                y: 130,
                w: 13,
                h: 40,
                round: 2,
                fill: 'panel',
                stroke: 'ink',
              },
            ],
      ),
      {
        kind: 'text',
        x: 84,
        y: 188,
        text: cellsIn ? 'holder: full' : 'holder: a bay is empty',
        size: 13,
      },
      {
        kind: 'rect',
        x: 256,
        y: 124,
        w: 48,
        h: 62,
        round: 8,
        fill: 'sunken',
        stroke: 'ink',
        width: 1.5,
      },
      { kind: 'rect', x: 264, y: 150, w: 32, h: 8, round: 4, fill: 'panel', stroke: 'ink' },
      { kind: 'rect', x: 276, y: 138, w: 8, h: 32, round: 4, fill: 'panel', stroke: 'ink' },
    ],
  };
}
