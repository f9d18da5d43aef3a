import { cellKinds, cellVoltage, isFresh, type Cell, type CellKind } from '../../power/cell';
import { seriesSource } from '../../power/holder';
import { choice, numeric, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { pickOne } from '../../variants/pick-one';
import { bayMiddle, drawHolder } from '../../drawings/draw-holder';
import { telescopeNames } from './draw-needs';
import { meterShapes } from '../../drawings/draw-meter';
import { voltsText } from '../../drawings/label-words';
import { predictTheHolder } from './predict-the-holder';
import { inWords, kindNames, rowKinds, rowOfCells, someBays } from '../../drawings/row-of-cells';
import { capitalised } from '../../wording/capital';

const voltsOf = (kind: CellKind): number => cellVoltage({ kind, left: 1 });
const round2 = (value: number): number => Math.round(100 * value) / 100;

function voltsOfTheRow({ random }: ItemDraw) {
  const count = pickOne(random, [4, 6, 8]);
  const kind = pickOne(random, rowKinds);
  const reversed = random.integer(0, count / 2 - 1);
  const bays = rowOfCells(random, { kind, count, turned: someBays(random, reversed, count) });
  const key = round2(seriesSource(bays, 20)?.openV ?? 0);
  const each = voltsOf(kind);
  const turned =
    reversed === 0
      ? 'All lie the right way round.'
      : `${capitalised(inWords(reversed))} of them ${reversed === 1 ? 'lies' : 'lie'} the wrong way round.`;
  return numeric({
    prompt: `A holder connects ${inWords(count)} fresh ${kindNames[kind]} cells of ${String(each)} V in a row. ${turned} How many volts does the meter show at its plug?`,
    unit: 'volts',
    key,
    tolerance: { mode: 'absolute', full: 0.1, zero: 1 },
    explanation: `In a row volts add, with their signs: ${String(count - reversed)} × ${String(each)} V${reversed === 0 ? '' : ` − ${String(reversed)} × ${String(each)} V`} = ${voltsText(key)}.`,
    slips:
      reversed === 0
        ? [{ gives: each, reason: 'That is one cell. In a row the volts of all of them add.' }]
        : [
            {
              gives: round2((count - reversed) * each),
              reason:
                'You left the reversed cells out. Each of them also pushes the wrong way and takes away the volts of one more.',
              misconception: 'reversed-cell-is-only-missing',
            },
            { gives: round2(count * each), reason: 'That is the row with all of them right.' },
          ],
  });
}

function pointAtTheTurnedCell({ random }: ItemDraw) {
  const count = pickOne(random, [5, 6, 7, 8]);
  const turned = random.integer(0, count - 1);
  const bays = rowOfCells(random, { kind: 'alkaline', count, turned: [turned] });
  const spot = (bay: number) => ({
    ...bayMiddle(bay, count),
    where: `bay ${String(bay + 1)}, counted from the left`,
    reason:
      bay === turned
        ? 'Its plus end sits on the spring. The flat minus end belongs there.'
        : 'Its flat minus end sits on the spring, as it should. Look at each spring anew: they need not alternate.',
  });
  return point({
    prompt: `The holder for ${pickOne(random, telescopeNames)} is full. One cell lies the wrong way round. Point at it.`,
    drawing: drawHolder(bays),
    explanation: 'The spring is for the flat minus end of a cell, wherever the spring is.',
    right: spot(turned),
    wrong: bays
      .map((_, bay) => bay)
      .filter((bay) => bay !== turned)
      .map(spot),
  });
}

function whichBelongTogether({ random }: ItemDraw) {
  const kind = pickOne(random, rowKinds);
  const others = cellKinds.filter((one) => one !== kind);
  const other = random.pick(others) ?? 'lithium';
  const cells: Cell[] = random.shuffle([
    ...Array.from({ length: 3 }, () => ({ kind, left: 1 })),
    ...(random.next() < 0.5 ? [{ kind, left: 1 }] : [{ kind: other, left: 1 }]),
    { kind: other, left: 1 },
    { kind, left: pickOne(random, [0.2, 0.3, 0.4, 0.5]) },
  ]);
  const option = ({ cell, tag }: { cell: Cell; tag: string }) => ({
    text: `Cell ${tag}: ${kindNames[cell.kind]}, ${voltsText(cellVoltage(cell), 2)}`,
    reason: !isFresh(cell)
      ? `It reads less than others of its kind: it has been used. The others would drive it backwards at the end, and it leaks.`
      : cell.kind === kind
        ? `${capitalised(kindNames[kind])}, and it reads ${voltsText(voltsOf(kind), 2)} as a fresh one does.`
        : `It is another kind. It empties at another speed, and the first that is empty leaks.`,
  });
  const tagged = cells.map((cell, i) => ({ cell, tag: 'ABCDEF'.charAt(i) }));
  const belongs = ({ cell }: { cell: Cell }) => cell.kind === kind && isFresh(cell);
  return several({
    prompt: `${pickOne(random, ['You hold loose cells across a meter, one after another.', 'Loose cells lie in a drawer, and you have a meter.', 'Somebody hands you cells that were measured a minute ago.'])} You want ${kindNames[kind]} cells for the holder. Tick all that belong together.`,
    explanation:
      'One kind, all fresh, all put in together. The poorest decides how long they last.',
    right: tagged.filter(belongs).map(option),
    wrong: tagged.filter((one) => !belongs(one)).map(option),
  });
}

function howManyTurned({ random }: ItemDraw) {
  const count = pickOne(random, [6, 8, 8]);
  const reversed = random.integer(1, count / 2 - 1);
  const bays = rowOfCells(random, {
    kind: 'alkaline',
    count,
    turned: someBays(random, reversed, count),
  });
  const reads = voltsText(seriesSource(bays, 20)?.openV ?? 0);
  const whole = voltsText(count * 1.5);
  const option = (turned: number) => ({
    text:
      turned === 0
        ? `None of the ${inWords(count)}`
        : `${capitalised(inWords(turned))} of the ${inWords(count)}`,
    reason:
      turned === reversed
        ? `${whole} less 3 V for each that is turned is ${reads}.`
        : turned === 2 * reversed
          ? `You took away 1.5 V for each. A turned cell takes its own volts and those of one more: 3 V.`
          : `Then the meter would show ${voltsText((count - 2 * turned) * 1.5)}.`,
    ...(turned === 2 * reversed ? { misconception: 'reversed-cell-is-only-missing' as const } : {}),
  });
  const wrong = [2 * reversed, 0, reversed + 1, reversed - 1].filter(
    (turned, i, all) => turned !== reversed && turned >= 0 && all.indexOf(turned) === i,
  );
  return choice({
    prompt: `A closed holder has ${inWords(count)} fresh alkaline cells of 1.5 V in a row. How many of them lie the wrong way round?`,
    drawing: {
      width: 320,
      height: 64,
      alternative: `A meter at the holder’s plug shows ${reads}.`,
      shapes: [
        ...meterShapes(6, 6, reads),
        { kind: 'text', x: 168, y: 38, text: 'at the holder’s plug', tone: 'soft' },
      ],
    },
    explanation: `All the right way round they make ${whole}. Each turned cell takes away 3 V.`,
    right: option(reversed),
    wrong: wrong.slice(0, 3).map(option),
  });
}

/** Cells in a row: volts with their signs, springs and ends, what belongs together. */
export const cellsInARow: ItemFamily = {
  id: 'cells-in-a-row',
  lesson: 'power-without-smoke',
  objective: 'cells',
  skill: 'power',
  title: 'Cells in a row, and what they make',
  version: 2,
  templates: {
    'volts-of-the-row': voltsOfTheRow,
    'point-at-the-turned-cell': pointAtTheTurnedCell,
    'which-belong-together': whichBelongTogether,
    'how-many-turned': howManyTurned,
    'predict-the-holder': predictTheHolder,
  },
};
