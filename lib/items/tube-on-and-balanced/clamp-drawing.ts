import type { ItemDrawing } from '../../drawings/drawing';

/** Parts of the clamp in the drawing below; `where` tells the place without the name. */
export const clampSpots = [
  {
    id: 'bar',
    x: 128,
    y: 100,
    where: 'between the round tube and the jaws',
    name: 'dovetail bar',
    does: 'is screwed to the tube and slides in the clamp',
  },
  {
    id: 'clamp',
    x: 160,
    y: 34,
    where: 'the large knob above the jaws',
    name: 'clamp screw',
    does: 'presses the jaw onto the bar',
  },
  {
    id: 'stop',
    x: 122,
    y: 158,
    where: 'the small pin at the end below',
    name: 'stop screw',
    does: 'stands in the way of the bar if the clamp is loose',
  },
  {
    id: 'clutch',
    x: 268,
    y: 100,
    where: 'the wide disc on the arm, to the right',
    name: 'altitude clutch',
    does: 'holds the tube at its height by friction',
  },
] as const;

/** Tube, dovetail bar, clamp and arm, cut across and looked at from behind. Our own design, drawn plainly. */
export const clampDrawing: ItemDrawing = {
  width: 320,
  height: 200,
  alternative:
    'A tube from its end, as a circle on the left. A bar is screwed to its right side. Two jaws hold the bar from above and below, with a large knob above. A small pin stands up into the bar’s way below. To the right an arm begins with a wide disc.',
  shapes: [
    { kind: 'circle', cx: 64, cy: 100, r: 52, fill: 'soft', stroke: 'ink', width: 2 },
    { kind: 'circle', cx: 64, cy: 100, r: 43, fill: 'panel', stroke: 'strong', width: 1 },
    { kind: 'path', d: 'M114 82 L142 70 V130 L114 118 Z', fill: 'accent', stroke: 'ink', width: 2 },
    {
      kind: 'path',
      d: 'M132 52 H206 V148 H150 V132 H176 V68 H132 Z',
      fill: 'strong',
      stroke: 'ink',
    },
    { kind: 'rect', x: 152, y: 40, w: 16, h: 14, fill: 'soft', stroke: 'ink' },
    { kind: 'rect', x: 140, y: 24, w: 40, h: 18, round: 4, fill: 'soft', stroke: 'ink', width: 2 },
    { kind: 'rect', x: 117, y: 134, w: 10, h: 34, round: 2, fill: 'soft', stroke: 'ink', width: 2 },
    { kind: 'line', x1: 206, y1: 100, x2: 250, y2: 100, stroke: 'strong', width: 22 },
    { kind: 'rect', x: 256, y: 56, w: 24, h: 88, round: 4, fill: 'soft', stroke: 'ink', width: 2 },
    { kind: 'line', x1: 292, y1: 60, x2: 292, y2: 196, stroke: 'strong', width: 18 },
  ],
};
