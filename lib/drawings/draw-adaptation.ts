import type { ItemDrawing, Shape } from './drawing';
import { lightNeeded } from '../night/dark-adaptation';

const left = 62;
const right = 310;
const top = 12;
const bottom = 160;
const longestMin = 40;
const xOf = (minutes: number): number => left + (minutes / longestMin) * (right - left);
/** Powers of ten, from none to five. */
const yOf = (times: number): number => bottom - (Math.log10(times) / 5) * (bottom - top);

const timesText = ['1×', '10×', '100×', '1000×', '10 000×', '100 000×'];

/** Minutes since the last white light, at a minute of the evening; `flashes` start it anew. */
export const minutesInTheDark = (minute: number, flashes: readonly number[]): number =>
  minute - Math.max(0, ...flashes.filter((flash) => flash <= minute));

/** Where a minute lies on the curve. */
export const adaptationPoint = (minute: number, flashes: readonly number[]) => ({
  x: xOf(minute),
  y: yOf(lightNeeded(minutesInTheDark(minute, flashes))),
});

/** The curve of how much light an eye needs, begun anew by each flash. Every point is the engine's. */
const adaptationCurve = (flashes: readonly number[]): string =>
  Array.from({ length: 4 * longestMin + 1 }, (_, i) => i / 4)
    .map((minute, i) => {
      const { x, y } = adaptationPoint(minute, flashes);
      return `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`;
    })
    .join(' ');

const axes = (): Shape[] => [
  ...timesText.flatMap((text, power): Shape[] => [
    {
      kind: 'line',
      x1: left,
      x2: right,
      y1: yOf(10 ** power),
      y2: yOf(10 ** power),
      stroke: 'line',
    },
    { kind: 'text', x: left - 5, y: yOf(10 ** power) + 5, text, size: 12, anchor: 'end' },
  ]),
  ...[0, 10, 20, 30, 40].flatMap((minute): Shape[] => [
    { kind: 'line', x1: xOf(minute), x2: xOf(minute), y1: top, y2: bottom, stroke: 'line' },
    {
      kind: 'text',
      x: xOf(minute),
      y: bottom + 16,
      text: String(minute),
      size: 12,
      anchor: 'middle',
    },
  ]),
  {
    kind: 'text',
    x: 186,
    y: 192,
    text: 'minutes since the bright room',
    size: 13,
    anchor: 'middle',
    tone: 'soft',
  },
];

/** The chart of dark adaptation, with a white light at some minutes. */
export function drawAdaptation(flashes: readonly number[], alternative: string): ItemDrawing {
  return {
    width: 320,
    height: 198,
    alternative,
    shapes: [
      ...axes(),
      { kind: 'path', d: adaptationCurve(flashes), stroke: 'accent', width: 3 },
      ...flashes.map((flash): Shape => ({
        kind: 'line',
        x1: xOf(flash),
        x2: xOf(flash),
        y1: top,
        y2: bottom,
        stroke: 'danger',
        width: 2,
        dashed: true,
      })),
    ],
  };
}
