import type { ItemDrawing, Shape } from '../../drawings/drawing';

/** What may be on the field, in its unsafe form or not. */
export const fieldThings = ['lead', 'cells', 'adapter', 'pack'] as const;
type FieldThing = (typeof fieldThings)[number];

type Told = { x: number; y: number; where: string; unsafe: string; safe: string };
export const fieldSpots: Readonly<Record<FieldThing, Told>> = {
  lead: {
    x: 160,
    y: 176,
    where: 'in front, on the path',
    unsafe: 'a lead lies loose across the path',
    safe: 'the path is clear, the lead tied along the tripod’s leg',
  },
  cells: {
    x: 52,
    y: 150,
    where: 'on the left, on the bench',
    unsafe: 'loose cells lie among coins on the bench',
    safe: 'cells stand in their box on the bench',
  },
  adapter: {
    x: 274,
    y: 148,
    where: 'on the right, by the puddle',
    unsafe: 'a mains adapter lies at the edge of a puddle',
    safe: 'the puddle has nothing near it; the adapter hangs indoors behind the window',
  },
  pack: {
    x: 160,
    y: 104,
    where: 'in the middle, on the tripod’s tray',
    unsafe: 'the pack on the tray has a bulging case',
    safe: 'a flat, sound pack lies on the tray',
  },
};

const tripod: Shape[] = [
  { kind: 'line', x1: 160, y1: 60, x2: 118, y2: 160, stroke: 'on-sky', width: 4 },
  { kind: 'line', x1: 160, y1: 60, x2: 202, y2: 160, stroke: 'on-sky', width: 4 },
  { kind: 'line', x1: 160, y1: 60, x2: 160, y2: 150, stroke: 'on-sky', width: 4 },
  {
    kind: 'rect',
    x: 112,
    y: 28,
    w: 92,
    h: 22,
    round: 4,
    fill: 'panel',
    stroke: 'on-sky',
    turnDeg: -18,
  },
  { kind: 'line', x1: 136, y1: 112, x2: 184, y2: 112, stroke: 'on-sky', width: 3 },
];

function shapesOf(thing: FieldThing, unsafe: boolean): Shape[] {
  switch (thing) {
    case 'lead':
      return unsafe
        ? [{ kind: 'path', d: 'M150 112 C120 190 210 160 316 182', stroke: 'sky-lamp', width: 3 }]
        : [{ kind: 'path', d: 'M160 112 L121 158', stroke: 'sky-lamp', width: 3 }];
    case 'cells':
      return unsafe
        ? [
            { kind: 'rect', x: 30, y: 140, w: 22, h: 8, fill: 'sky-lamp', turnDeg: 20 },
            { kind: 'rect', x: 52, y: 136, w: 22, h: 8, fill: 'sky-lamp', turnDeg: -35 },
            { kind: 'circle', cx: 50, cy: 146, r: 5, stroke: 'on-sky', width: 1.5 },
            { kind: 'circle', cx: 70, cy: 147, r: 4, stroke: 'on-sky', width: 1.5 },
          ]
        : [
            { kind: 'rect', x: 34, y: 126, w: 36, h: 24, stroke: 'on-sky', width: 1.5 },
            ...[38, 46, 54, 62].map((x): Shape => ({
              kind: 'rect',
              x,
              y: 130,
              w: 5,
              h: 19,
              fill: 'sky-lamp',
            })),
          ];
    case 'adapter':
      return unsafe
        ? [
            { kind: 'rect', x: 258, y: 132, w: 24, h: 20, round: 3, fill: 'sky-lamp' },
            { kind: 'path', d: 'M282 142 C300 142 300 110 318 108', stroke: 'sky-lamp', width: 2 },
          ]
        : [
            { kind: 'rect', x: 268, y: 52, w: 12, h: 10, round: 2, fill: 'sky-lamp' },
            { kind: 'line', x1: 274, y1: 46, x2: 274, y2: 52, stroke: 'sky-lamp', width: 2 },
          ];
    case 'pack':
      return unsafe
        ? [{ kind: 'path', d: 'M144 110 Q142 86 160 84 Q178 86 176 110 Z', fill: 'sky-lamp' }]
        : [{ kind: 'rect', x: 144, y: 98, w: 32, h: 12, round: 2, fill: 'sky-lamp' }];
  }
}

/** An evening's field with four things on it, of which one is unsafe. */
export function drawField(unsafe: FieldThing): ItemDrawing {
  const told = fieldThings.map(
    (thing) =>
      `${fieldSpots[thing].where}: ${fieldSpots[thing][thing === unsafe ? 'unsafe' : 'safe']}`,
  );
  return {
    width: 320,
    height: 200,
    alternative: `A telescope on a field in the evening. ${told.join('. ')}.`,
    shapes: [
      { kind: 'rect', x: 0, y: 0, w: 320, h: 200, fill: 'sky' },
      { kind: 'rect', x: 0, y: 152, w: 320, h: 48, fill: 'land' },
      { kind: 'path', d: 'M0 168 H320 V190 H0 Z', stroke: 'sky-line', dashed: true },
      // The house with its window, the bench, the puddle.
      { kind: 'rect', x: 240, y: 30, w: 80, h: 92, stroke: 'sky-line', width: 1.5 },
      { kind: 'rect', x: 256, y: 44, w: 36, h: 28, stroke: 'sky-line', width: 1.5 },
      { kind: 'line', x1: 18, y1: 151, x2: 88, y2: 151, stroke: 'on-sky', width: 3 },
      { kind: 'path', d: 'M248 156 Q274 148 304 156 Q290 166 262 164 Z', fill: 'sky-line' },
      ...tripod,
      ...fieldThings.flatMap((thing) => shapesOf(thing, thing === unsafe)),
    ],
  };
}
