import { coldShare } from '../../power/capacity';
import type { CellKind } from '../../power/cell';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import { degreesText } from '../../drawings/label-words';
import { kindNames } from '../../drawings/row-of-cells';

/** Where a learner may be asked to read: on a vertical line of the chart. */
export const coldChartTemperatures = [-20, -15, -10, -5, 0, 5, 10] as const;

const left = 46;
const right = 308;
const top = 14;
const bottom = 176;
const xOf = (temperatureC: number): number => left + ((temperatureC + 20) / 40) * (right - left);
const yOf = (share: number): number => bottom - share * (bottom - top);

const lineOf = (kind: CellKind): string =>
  Array.from({ length: 17 }, (_, i) => -20 + 2.5 * i)
    .map(
      (t, i) => `${i === 0 ? 'M' : 'L'}${xOf(t).toFixed(1)} ${yOf(coldShare(kind, t)).toFixed(1)}`,
    )
    .join(' ');

const label = (t: number): Shape => ({
  kind: 'text',
  x: xOf(t),
  y: bottom + 17,
  text: degreesText(t),
  size: 12,
  anchor: t === 20 ? 'end' : 'middle',
});

const grid = (): Shape[] => [
  ...[0, 0.2, 0.4, 0.6, 0.8, 1].flatMap((share): Shape[] => [
    { kind: 'line', x1: left, y1: yOf(share), x2: right, y2: yOf(share), stroke: 'line' },
    {
      kind: 'text',
      x: left - 5,
      y: yOf(share) + 5,
      text: `${String(100 * share)} %`,
      size: 12,
      anchor: 'end',
    },
  ]),
  ...[-20, -15, -10, -5, 0, 5, 10, 15, 20].flatMap((t): Shape[] => [
    { kind: 'line', x1: xOf(t), y1: top, x2: xOf(t), y2: bottom, stroke: 'line' },
    ...(t % 10 === 0 ? [label(t)] : []),
  ]),
];

/** Points of one line in words, every ten degrees: what lies between is read off. */
const inWords = (kind: CellKind): string =>
  [-20, -10, 0, 10, 20]
    .map((t) => `${String(Math.round(100 * coldShare(kind, t)))} per cent at ${degreesText(t)}`)
    .join(', ');

/** Two lines over the temperature: one whole, one dashed. */
export const drawColdChart = (whole: CellKind, dashed: CellKind): ItemDrawing => ({
  width: 320,
  height: 226,
  alternative: `A chart of what the cold leaves of a cell, straight between these points. Whole line, ${kindNames[whole]}: ${inWords(whole)}. Dashed line, ${kindNames[dashed]}: ${inWords(dashed)}.`,
  shapes: [
    ...grid(),
    { kind: 'path', d: lineOf(whole), stroke: 'ink', width: 2.5 },
    { kind: 'path', d: lineOf(dashed), stroke: 'accent', width: 2.5, dashed: true },
    { kind: 'line', x1: 46, y1: 212, x2: 76, y2: 212, stroke: 'ink', width: 2.5 },
    { kind: 'text', x: 82, y: 216, text: kindNames[whole], size: 13 },
    {
      kind: 'line',
      x1: 182,
      y1: 212,
      x2: 212,
      y2: 212,
      stroke: 'accent',
      width: 2.5,
      dashed: true,
    },
    { kind: 'text', x: 218, y: 216, text: kindNames[dashed], size: 13 },
  ],
});
