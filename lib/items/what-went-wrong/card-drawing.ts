import type { SettingsCard } from '../../faults/evidence';
import type { ItemDrawing, Shape } from '../../drawings/drawing';

/** The lines of a settings card, as they are read. */
export const cardLines = (card: SettingsCard): readonly (readonly [string, string])[] => [
  ['Date', card.localTime.slice(0, 10)],
  ['Clock', card.localTime.slice(11, 16)],
  ['Zone', `UTC ${card.timeZoneOffset}`],
  ['Summer time', card.summerTime ? 'yes' : 'no'],
  ['Latitude', card.latitudeText],
  ['Longitude', card.longitudeText],
];

/** The card on which somebody wrote what was entered. */
export function cardDrawing(card: SettingsCard): ItemDrawing {
  const lines = cardLines(card);
  return {
    width: 320,
    height: 40 + 30 * lines.length,
    alternative: `The settings card. ${lines.map(([name, value]) => `${name}: ${value}.`).join(' ')}`,
    shapes: [
      {
        kind: 'rect',
        x: 10,
        y: 6,
        w: 300,
        h: 28 + 30 * lines.length,
        fill: 'panel',
        stroke: 'strong',
        round: 4,
      },
      { kind: 'text', x: 24, y: 28, text: 'What was entered', size: 14, tone: 'soft' },
      ...lines.flatMap(([name, value], i): Shape[] => [
        { kind: 'text', x: 24, y: 56 + 30 * i, text: name, size: 15, tone: 'ink' },
        {
          kind: 'text',
          x: 296,
          y: 56 + 30 * i,
          text: value,
          size: 15,
          tone: 'ink',
          anchor: 'end',
          bold: true,
        },
      ]),
    ],
  };
}
