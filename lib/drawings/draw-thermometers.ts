import type { ItemDrawing, Shape } from './drawing';

const bulbY = 150;
const topY = 20;
const lowest = -10;
const highest = 30;
const yOf = (celsius: number): number =>
  bulbY - 12 - ((celsius - lowest) / (highest - lowest)) * (bulbY - 12 - topY);

/** A thermometer from −10 to 30 °C with a line at each degree. */
export function thermometerShapes(x: number, celsius: number, title: string): Shape[] {
  const degrees = Array.from({ length: highest - lowest + 1 }, (_, i) => lowest + i);
  return [
    { kind: 'text', x, y: 184, text: title, size: 13, anchor: 'middle' },
    ...degrees.flatMap((degree): Shape[] => [
      {
        kind: 'line',
        x1: x + 9,
        y1: yOf(degree),
        y2: yOf(degree),
        stroke: 'ink',
        x2: x + (degree % 10 === 0 ? 22 : degree % 5 === 0 ? 17 : 13),
        width: 1,
      },
      ...(degree % 10 === 0 ? [label(x, degree)] : []),
    ]),
    {
      kind: 'rect',
      x: x - 6,
      y: topY - 6,
      w: 12,
      h: bulbY - topY,
      round: 6,
      fill: 'panel',
      stroke: 'ink',
    },
    { kind: 'rect', x: x - 3, y: yOf(celsius), w: 6, h: bulbY - yOf(celsius), fill: 'danger' },
    { kind: 'circle', cx: x, cy: bulbY, r: 11, fill: 'danger', stroke: 'ink' },
  ];
}

const label = (x: number, degree: number): Shape => ({
  kind: 'text',
  x: x + 26,
  y: yOf(degree) + 4,
  text: String(degree).replace('-', '−'),
  size: 12,
});

type Reading = { title: string; celsius: number };

/** Two thermometers side by side; each in whole degrees. */
export function drawThermometers(a: Reading, b: Reading): ItemDrawing {
  const told = ({ title, celsius }: Reading) =>
    `${title}: ${String(Math.abs(celsius))} lines ${celsius < 0 ? 'below' : 'above'} 0`;
  return {
    width: 320,
    height: 192,
    alternative: `Two thermometers with a line at each degree Celsius. ${told(a)}. ${told(b)}.`,
    shapes: [
      ...thermometerShapes(88, a.celsius, a.title),
      ...thermometerShapes(218, b.celsius, b.title),
    ],
  };
}
