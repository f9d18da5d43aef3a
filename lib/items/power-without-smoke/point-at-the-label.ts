import type { Centre } from '../../power/supply';
import type { ItemDrawing } from '../../drawings/drawing';
import type { ItemDraw } from '../item-family';
import { point } from '../build-item';
import { pickOne } from '../../variants/pick-one';
import { directCurrentShapes, polarityShapes } from '../../drawings/draw-labels';
import { centreWord } from '../../drawings/label-words';

type Label = { inputA: number; volts: number; amperes: number; centre: Centre };

/** Where each thing stands on the label: its spot lies to the right of it, so that no ring hides it. */
const places = {
  'input-volts': { x: 150, y: 41, where: 'first line, the left number' },
  'input-amperes': { x: 264, y: 41, where: 'first line, the right number' },
  volts: { x: 150, y: 84, where: 'second line, the left number' },
  amperes: { x: 264, y: 84, where: 'second line, the right number' },
  polarity: { x: 150, y: 124, where: 'third line, the mark on the left' },
  house: { x: 264, y: 124, where: 'third line, the mark on the right' },
} as const;
type Place = keyof typeof places;

function drawLabel({ inputA, volts, amperes, centre }: Label): ItemDrawing {
  return {
    width: 320,
    height: 150,
    alternative: `The label of an adapter. First line: input 100 to 240 volts alternating current, ${String(inputA)} amperes. Second line: output ${String(volts)} volts direct current, ${String(amperes)} amperes. Third line: a dot in a ring, the dot joined to ${centreWord(centre)}; beside it a small house.`,
    shapes: [
      ...([{ x: 6, y: 6, w: 308, h: 138 }] as const).map(
        (box) =>
          ({
            kind: 'rect',
            ...box,
            round: 6,
            fill: 'panel',
            stroke: 'strong',
            width: 1.5,
          }) as const,
      ),
      { kind: 'text', x: 18, y: 46, text: 'IN', size: 13, tone: 'soft' },
      { kind: 'text', x: 46, y: 46, text: '100–240 V ~', size: 15 },
      { kind: 'text', x: 202, y: 46, text: `${String(inputA)} A`, size: 15 },
      { kind: 'text', x: 18, y: 90, text: 'OUT', size: 13, tone: 'soft' },
      { kind: 'text', x: 66, y: 90, text: `${String(volts)} V`, size: 17, bold: true },
      ...directCurrentShapes(107, 90),
      { kind: 'text', x: 196, y: 90, text: `${String(amperes)} A`, size: 17, bold: true },
      ...polarityShapes(84, 124, centre),
      // A house: walls and roof.
      { kind: 'path', d: 'M206 138 V122 L220 110 L234 122 V138 Z', stroke: 'ink', width: 1.5 },
    ],
  };
}

type Asked = { place: Place; asks: string; because: string };
const asked: readonly [Asked, ...Asked[]] = [
  {
    place: 'volts',
    asks: 'what must be equal to the volts beside the telescope’s socket',
    because: 'The output volts: that is what comes out of the plug.',
  },
  {
    place: 'amperes',
    asks: 'what must be at least as much as the telescope takes while it slews',
    because: 'The output amperes: the most that it is made to give.',
  },
  {
    place: 'polarity',
    asks: 'what tells whether plus is in the middle of the plug',
    because: 'The dot is the middle pin; follow its line to the sign.',
  },
  {
    place: 'house',
    asks: 'what says where it may be used',
    because: 'A small house: for dry rooms only, not for a damp field.',
  },
  {
    place: 'input-volts',
    asks: 'what it needs from the wall',
    because: 'The input volts, alternating: the dangerous side of the adapter.',
  },
];

const whatItIs: Readonly<Record<Place, string>> = {
  'input-volts': 'Those volts go in from the wall. They never reach the telescope’s plug.',
  'input-amperes': 'Those amperes it takes from the wall. The telescope’s side is the second line.',
  volts: 'Those are the volts that come out of its plug.',
  amperes: 'Those are the most amperes that it is made to give at its plug.',
  polarity: 'That mark tells which sign the middle pin has.',
  house: 'That house says that the adapter is for dry rooms only.',
};

/** An adapter's label with both its sides: which of its marks answers a question. */
export function pointAtTheLabel({ random }: ItemDraw) {
  const { place, asks, because } = pickOne(random, asked);
  const label: Label = {
    inputA: pickOne(random, [0.4, 0.5, 0.6, 0.7]),
    volts: pickOne(random, [9, 12, 19, 24]),
    amperes: pickOne(random, [1, 2, 3, 5]),
    centre: pickOne<Centre>(random, ['positive', 'negative']),
  };
  const spot = (one: Place) => ({ ...places[one], reason: whatItIs[one] });
  const all: readonly Place[] = [
    'input-volts',
    'input-amperes',
    'volts',
    'amperes',
    'polarity',
    'house',
  ];
  return point({
    prompt: `The teacher shows you the label of an adapter. Point at ${asks}.`,
    drawing: drawLabel(label),
    explanation: because,
    right: { ...places[place], reason: because },
    wrong: all.filter((one) => one !== place).map(spot),
  });
}
