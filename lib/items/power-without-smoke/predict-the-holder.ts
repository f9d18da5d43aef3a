import { cellVoltage } from '../../power/cell';
import { seriesSource } from '../../power/holder';
import type { ItemDraw } from '../item-family';
import { choice } from '../build-item';
import { pickOne } from '../../variants/pick-one';
import { holderInWords, holderShapes } from '../../drawings/draw-holder';
import { meterShapes } from '../../drawings/draw-meter';
import { voltsText } from '../../drawings/label-words';
import { inWords, kindNames, rowKinds, rowOfCells, someBays } from '../../drawings/row-of-cells';
import { capitalised } from '../../wording/capital';

const states = ['right', 'empty', 'one', 'two', 'all'] as const;
type State = (typeof states)[number];

const open = 'Nothing: the circuit is open';

/** Predict what the meter shows at a holder's plug, then see it. */
export function predictTheHolder({ random }: ItemDraw) {
  const state = pickOne(random, states);
  const count = pickOne(random, [6, 8]);
  const kind = pickOne(random, rowKinds);
  const each = cellVoltage({ kind, left: 1 });
  const row = {
    kind,
    count,
    turned: someBays(random, { right: 0, empty: 0, one: 1, two: 2, all: count }[state], count),
    empty: state === 'empty' ? random.integer(0, count - 1) : null,
  };
  const bays = rowOfCells(random, row);
  const source = seriesSource(bays, 20);
  const reads = source === null ? open : voltsText(source.openV);
  const told: Readonly<Record<State, string>> = {
    right: 'all lie the right way round',
    empty: 'one bay is empty, and the rest lie the right way round',
    one: 'one lies the wrong way round',
    two: 'two lie the wrong way round',
    all: 'all lie the wrong way round',
  };
  const reasonOf: Readonly<Record<State, string>> = {
    right: 'So it reads with all of them in and right.',
    empty: 'So it reads with a bay empty: in a row, one gap stops everything.',
    one: 'So it reads with one turned: its own volts and those of one more are gone.',
    two: 'So it reads with two turned: the volts of four cells are gone.',
    all: 'So it reads with all of them turned: as many volts, with a minus.',
  };
  const textOf: Readonly<Record<State, string>> = {
    right: voltsText(count * each),
    empty: open,
    one: voltsText((count - 2) * each),
    two: voltsText((count - 4) * each),
    all: voltsText(-count * each),
  };
  const others = states.filter((one) => one !== state);
  const oneLess = {
    text: voltsText((count - 1) * each),
    reason:
      state === 'empty'
        ? 'In a row the current passes through every bay. A gap does not make it weaker, it stops it.'
        : 'That leaves one cell out. A turned one also takes away the volts of one more.',
    misconception: 'reversed-cell-is-only-missing' as const,
  };
  return choice({
    prompt: `A holder for ${inWords(count)} ${kindNames[kind]} cells of ${String(each)} V in a row: ${told[state]}. Predict what the meter shows at its plug.`,
    explanation: `${capitalised(told[state])}: ${reads === open ? 'no current can flow, and the meter shows nothing' : `the meter shows ${reads}`}.`,
    afterwards: {
      width: 320,
      height: 216,
      alternative: `The holder and its meter. ${holderInWords(bays)} The meter shows ${source === null ? 'no volts' : reads}.`,
      shapes: [...holderShapes(bays), ...meterShapes(85, 158, source === null ? '– – V' : reads)],
    },
    right: { text: reads, reason: reasonOf[state] },
    wrong: [
      ...random
        .shuffle(others)
        .slice(0, 2)
        .map((one) => ({ text: textOf[one], reason: reasonOf[one] })),
      oneLess,
    ],
  });
}
