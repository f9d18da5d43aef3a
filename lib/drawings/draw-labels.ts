import type { Centre, Supply, TelescopeNeeds } from '../power/supply';
import type { ItemDrawing, Shape } from './drawing';
import { centreWord, formNames } from './label-words';

/**
 * The usual mark of a plug's polarity (IEC 60417-5926, from memory): a ring for the sleeve and a dot for
 * the middle pin, each joined to its sign. About (x, y), 72 wide.
 */
export function polarityShapes(x: number, y: number, centre: Centre): Shape[] {
  const sign = (at: number, plus: boolean): Shape[] => [
    { kind: 'circle', cx: at, cy: y, r: 7, stroke: 'ink', width: 1.5 },
    { kind: 'line', x1: at - 4, y1: y, x2: at + 4, y2: y, stroke: 'ink', width: 1.5 },
    ...(plus
      ? [{ kind: 'line', x1: at, y1: y - 4, x2: at, y2: y + 4, stroke: 'ink', width: 1.5 } as const]
      : []),
  ];
  return [
    {
      kind: 'path',
      d: `M${String(x + 6)} ${String(y - 6)} A8.5 8.5 0 1 0 ${String(x + 6)} ${String(y + 6)}`,
      stroke: 'ink',
      width: 1.5,
    },
    { kind: 'line', x1: x - 8.5, y1: y, x2: x - 22, y2: y, stroke: 'ink', width: 1.5 },
    { kind: 'line', x1: x, y1: y, x2: x + 22, y2: y, stroke: 'ink', width: 1.5 },
    { kind: 'circle', cx: x, cy: y, r: 3, fill: 'ink' },
    ...sign(x - 29, centre === 'negative'),
    ...sign(x + 29, centre === 'positive'),
  ];
}

/**
 * The sign of direct current (IEC 60417-5031, from memory), a straight line over a dashed one: drawn, as
 * few fonts have it. From (x, y), its left end on the base line; 18 wide.
 */
export const directCurrentShapes = (x: number, y: number): Shape[] => [
  { kind: 'line', x1: x, x2: x + 18, y1: y - 8, y2: y - 8, stroke: 'ink', width: 1.8 },
  ...[0, 7, 14].map((dx): Shape => ({
    kind: 'line',
    x1: x + dx,
    x2: x + dx + 4,
    y1: y - 3,
    y2: y - 3,
    stroke: 'ink',
    width: 1.8,
  })),
];

type Card = { y: number; title: string; volts: number; amperes: string; centre: Centre };

function card({ y, title, volts, amperes, centre }: Card): Shape[] {
  return [
    { kind: 'rect', x: 6, y, w: 308, h: 66, round: 6, fill: 'panel', stroke: 'strong', width: 1.5 },
    { kind: 'text', x: 18, y: y + 22, text: title, size: 13, tone: 'soft' },
    { kind: 'text', x: 18, y: y + 48, text: `${String(volts)} V`, size: 17, bold: true },
    ...directCurrentShapes(66, y + 48),
    { kind: 'text', x: 98, y: y + 48, text: amperes, size: 17, bold: true },
    ...polarityShapes(258, y + 42, centre),
  ];
}

/** The plate beside the socket above the label of one supply. */
export function drawPlateAndLabel(needs: TelescopeNeeds, supply: Omit<Supply, 'id'>): ItemDrawing {
  return {
    width: 320,
    height: 150,
    alternative: `Beside the telescope’s socket: ${String(needs.nominalV)} volts direct current, up to ${String(needs.slewingA)} amperes, middle pin ${centreWord(needs.centre)}. On the ${formNames[supply.form]}: ${String(supply.volts)} volts direct current, ${String(supply.ratedA)} amperes, middle pin ${centreWord(supply.centre)}.`,
    shapes: [
      ...card({
        y: 4,
        title: 'Beside the telescope’s socket',
        centre: needs.centre,
        volts: needs.nominalV,
        amperes: `max ${String(needs.slewingA)} A`,
      }),
      ...card({
        y: 80,
        title: `On the ${formNames[supply.form]}`,
        centre: supply.centre,
        volts: supply.volts,
        amperes: `${String(supply.ratedA)} A`,
      }),
    ],
  };
}
