import type { ItemDrawing, Shape } from './drawing';
import { voltsText } from './label-words';

/** A meter's box with what it shows; `volts` null: an open circuit. About 150 by 62. */
export function meterShapes(x: number, y: number, shows: string): Shape[] {
  return [
    { kind: 'rect', x, y, w: 150, h: 52, round: 8, fill: 'sunken', stroke: 'ink', width: 2 },
    { kind: 'rect', x: x + 8, y: y + 8, w: 134, h: 36, round: 4, fill: 'panel', stroke: 'line' },
    { kind: 'text', x: x + 134, y: y + 34, text: shows, size: 22, anchor: 'end', bold: true },
  ];
}

type MeterShows = { volts: number; amperes: number; title: string };

/** Two meters: volts at the plug, and the current through it. */
export function drawMeter({ volts, amperes, title }: MeterShows): ItemDrawing {
  return {
    width: 320,
    height: 96,
    alternative: `${title}: one meter shows ${voltsText(volts)}, the other ${String(amperes)} A.`,
    shapes: [
      { kind: 'text', x: 6, y: 20, text: title, tone: 'soft' },
      ...meterShapes(6, 34, voltsText(volts)),
      ...meterShapes(164, 34, `${String(amperes)} A`),
    ],
  };
}
