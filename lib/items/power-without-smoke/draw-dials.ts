import type { ItemDrawing, Shape } from '../../drawings/drawing';

const most = 15;
const sweepDeg = 120;

const onDial = (volts: number, radius: number, cx: number, cy: number) => {
  const angle = (((volts / most) * sweepDeg - sweepDeg / 2) * Math.PI) / 180;
  return { x: cx + radius * Math.sin(angle), y: cy - radius * Math.cos(angle) };
};

/** A dial from 0 to 15 V with a mark every half volt. */
function dialShapes(volts: number, cx: number, title: string): Shape[] {
  const cy = 118;
  const radius = 74;
  const marks = Array.from({ length: 2 * most + 1 }, (_, i) => i / 2);
  const line = (value: number, from: number, width: number, tone: 'ink' | 'danger'): Shape => {
    const a = onDial(value, from, cx, cy);
    const b = onDial(value, radius, cx, cy);
    return { kind: 'line', x1: a.x, y1: a.y, x2: b.x, y2: b.y, stroke: tone, width };
  };
  const needle = onDial(volts, radius - 4, cx, cy);
  return [
    {
      kind: 'rect',
      x: cx - 77,
      y: 26,
      w: 154,
      h: 106,
      round: 8,
      fill: 'panel',
      stroke: 'strong',
      width: 1.5,
    },
    { kind: 'text', x: cx, y: 16, text: title, anchor: 'middle', tone: 'soft' },
    ...marks.map((value) => line(value, radius - (value % 1 === 0 ? 10 : 6), 1, 'ink')),
    ...[0, 5, 10, 15].map((value): Shape => {
      const at = onDial(value, radius - 20, cx, cy);
      return {
        kind: 'text',
        x: at.x,
        y: at.y + 5,
        text: String(value),
        size: 13,
        anchor: 'middle',
      };
    }),
    { kind: 'line', x1: cx, y1: cy, x2: needle.x, y2: needle.y, stroke: 'danger', width: 2.5 },
    { kind: 'circle', cx, cy, r: 4, fill: 'danger' },
    { kind: 'text', x: cx + 18, y: cy + 8, text: 'V', size: 13, bold: true },
  ];
}

const halves = (volts: number): string => {
  const whole = Math.floor(volts);
  return volts === whole
    ? `on the mark for ${String(whole)}`
    : `on the short mark between ${String(whole)} and ${String(whole + 1)}`;
};

/** Two dials side by side; `tracking` and `slewing` in whole or half volts. */
export const drawDials = (tracking: number, slewing: number): ItemDrawing => ({
  width: 320,
  height: 140,
  alternative: `Two dials from 0 to 15 volts, with a short mark at every half volt. While tracking the needle stands ${halves(tracking)}; while slewing, ${halves(slewing)}.`,
  shapes: [
    ...dialShapes(tracking, 80, 'while tracking'),
    ...dialShapes(slewing, 240, 'while slewing'),
  ],
});
