import type { Centre, Supply, TelescopeNeeds } from '../../power/supply';
import type { ItemDrawing, Shape } from '../drawing';
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

function card(y: number, title: string, line: string, centre: Centre): Shape[] {
  return [
    { kind: 'rect', x: 6, y, w: 308, h: 66, round: 6, fill: 'panel', stroke: 'strong', width: 1.5 },
    { kind: 'text', x: 18, y: y + 22, text: title, size: 13, tone: 'soft' },
    { kind: 'text', x: 18, y: y + 48, text: line, size: 17, bold: true },
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
      ...card(
        4,
        'Beside the telescope’s socket',
        `${String(needs.nominalV)} V ⎓  max ${String(needs.slewingA)} A`,
        needs.centre,
      ),
      ...card(
        80,
        `On the ${formNames[supply.form]}`,
        `${String(supply.volts)} V ⎓  ${String(supply.ratedA)} A`,
        supply.centre,
      ),
    ],
  };
}
