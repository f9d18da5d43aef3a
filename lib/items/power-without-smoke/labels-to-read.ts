import {
  faultsOfSupply,
  supplyVerdicts,
  type Supply,
  type SupplyVerdict,
} from '../../power/supply';
import type { TelescopeNeeds } from '../../power/supply';
import { drawSupplies } from '../../variants/bench/power/draw-supplies';
import type { Random } from '../../variants/random';
import { choice, match, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import type { MisconceptionId } from '../misconceptions';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawPlateAndLabel } from '../../drawings/draw-labels';
import { drawNeeds, telescopeNames } from './draw-needs';
import {
  centreSign,
  formNames,
  labelText,
  otherCentre,
  plateText,
} from '../../drawings/label-words';
import { pointAtTheLabel } from './point-at-the-label';
import { predictTheCurrent } from './predict-the-current';

const three =
  'Three things must hold: equal volts, equal polarity, and at least the current that the telescope takes at its peak. A mains adapter outdoors is the teacher’s.';

/** Why a supply does not serve, told of this one. */
function against(
  verdict: SupplyVerdict,
  supply: Omit<Supply, 'id'>,
  needs: TelescopeNeeds,
): string {
  switch (verdict) {
    case 'fits':
      return `Equal volts, equal polarity, and ${String(supply.ratedA)} A are at least the ${String(needs.slewingA)} A that a slew takes.`;
    case 'wrong-polarity':
      return `Its middle pin is ${centreSign(supply.centre)}, the telescope wants ${centreSign(needs.centre)}. Plus and minus would be exchanged, and that can end a telescope.`;
    case 'too-many-volts':
      return `${String(supply.volts)} V are more than ${String(needs.nominalV)} V. More volts do harm, whatever the plug.`;
    case 'too-few-volts':
      return `${String(supply.volts)} V are less than ${String(needs.nominalV)} V. The computer will not run on that.`;
    case 'too-little-current':
      return `It is made to give ${String(supply.ratedA)} A at most. While slewing the telescope takes ${String(needs.slewingA)} A: the volts fall and the computer restarts.`;
    case 'mains-outdoors':
      return 'It hangs on the mains, whatever its numbers. Outdoors that is the teacher’s, dry, on a protected socket, by local rules.';
  }
}

const misled: Readonly<Partial<Record<SupplyVerdict, MisconceptionId>>> = {
  'wrong-polarity': 'plug-fits-so-it-serves',
  'too-many-volts': 'plug-fits-so-it-serves',
};

function whichServes({ random }: ItemDraw) {
  const needs = drawNeeds(random);
  const supplies = drawSupplies(needs, random);
  const verdictOf = (supply: Supply): SupplyVerdict => faultsOfSupply(supply, needs)[0] ?? 'fits';
  const option = (supply: Supply) => {
    const verdict = verdictOf(supply);
    const misconception = misled[verdict];
    return {
      text: labelText(supply),
      reason: against(verdict, supply, needs),
      ...(misconception === undefined ? {} : { misconception }),
    };
  };
  const [right] = supplies.filter((one) => verdictOf(one) === 'fits');
  if (right === undefined) throw new Error('one of the drawn supplies serves');
  return choice({
    prompt: `Beside ${pickOne(random, telescopeNames)}’s socket stands: ${plateText(needs)}. The plugs of all these fit. Which one may a student use outdoors?`,
    explanation: three,
    right: option(right),
    wrong: supplies
      .filter((one) => one !== right)
      .slice(0, 3)
      .map(option),
  });
}

const saidOf: Readonly<Record<Exclude<SupplyVerdict, 'fits'>, string>> = {
  'wrong-polarity': 'Plus and minus are exchanged',
  'too-many-volts': 'Its volts are too many',
  'too-few-volts': 'Its volts are too few',
  'too-little-current': 'It gives too little current',
  'mains-outdoors': 'It hangs on the mains',
};

/** A supply with two or three things against it. */
function drawFaulty(needs: TelescopeNeeds, random: Random): Omit<Supply, 'id'> {
  const faults = pickSome(random, ['volts', 'polarity', 'current', 'mains'], random.integer(2, 3));
  const volts = faults.includes('volts') ? pickOne(random, [5, 6, 9, 18, 19, 24]) : needs.nominalV;
  return {
    volts,
    centre: faults.includes('polarity') ? otherCentre(needs.centre) : needs.centre,
    ratedA: faults.includes('current')
      ? pickOne(random, [0.3, 0.5, 0.8])
      : pickOne(random, [2, 3, 5]),
    form: faults.includes('mains') ? 'mains-adapter' : volts === 5 ? 'usb-pack' : 'battery-pack',
  };
}

function whatSpeaksAgainst({ random }: ItemDraw) {
  const needs = drawNeeds(random);
  const supply = drawFaulty(needs, random);
  const found = faultsOfSupply({ ...supply, id: 'P' }, needs);
  const holds = (verdict: SupplyVerdict): string =>
    ({
      fits: '',
      'wrong-polarity': `Both middle pins are ${centreSign(needs.centre)}.`,
      'too-many-volts': `${String(supply.volts)} V are not more than ${String(needs.nominalV)} V.`,
      'too-few-volts': `${String(supply.volts)} V are not less than ${String(needs.nominalV)} V.`,
      'too-little-current': `${String(supply.ratedA)} A are at least ${String(needs.slewingA)} A.`,
      'mains-outdoors': `It is a ${formNames[supply.form]}: nothing of it hangs on the mains.`,
    })[verdict];
  const option = (verdict: Exclude<SupplyVerdict, 'fits'>) => ({
    text: saidOf[verdict],
    reason: found.includes(verdict) ? against(verdict, supply, needs) : holds(verdict),
  });
  const all = supplyVerdicts.filter((one) => one !== 'fits');
  return several({
    prompt: `You hold the plate of ${pickOne(random, telescopeNames)}’s socket beside the label of a supply. A student wants to use it outdoors. Tick all that speaks against it.`,
    drawing: drawPlateAndLabel(needs, supply),
    explanation: three,
    right: all.filter((one) => found.includes(one)).map(option),
    wrong: [
      ...all.filter((one) => !found.includes(one)).map(option),
      {
        text: 'It could give more current than is needed',
        reason:
          'Amperes on a supply say what it can give at most. The telescope takes what it needs and no more.',
        misconception: 'rated-current-is-pushed',
      },
    ],
  });
}

const marks = [
  {
    left: 'a straight line over a dashed one',
    right: 'direct current: plus stays plus',
    reason: 'The line is straight: the current flows one way, as from cells.',
  },
  {
    left: '~',
    right: 'alternating current, as in the mains',
    reason: 'A wave: plus and minus change places many times a second.',
  },
  {
    left: 'V',
    right: 'how hard it pushes: must be equal',
    reason: 'Volts must be those of the telescope. More does harm, less does nothing useful.',
  },
  {
    left: 'A',
    right: 'the most current it is made to give',
    reason: 'Amperes must be at least what the telescope takes at its peak.',
  },
  {
    left: 'mAh',
    right: 'how much charge it holds',
    reason: 'Milliampere-hours: current times hours. They tell how long, not how strong.',
  },
  {
    left: 'a dot in a ring, the dot joined to +',
    right: 'the middle pin is plus',
    reason: 'The dot stands for the middle pin, the ring for the sleeve round it.',
  },
  {
    left: 'a dot in a ring, the dot joined to −',
    right: 'the middle pin is minus',
    reason: 'The dot stands for the middle pin, the ring for the sleeve round it.',
  },
  {
    left: 'a small house',
    right: 'for dry rooms only',
    reason: 'A house on a label says: indoors. Damp grass is no dry room.',
  },
  {
    left: 'an arrow from INPUT',
    right: 'what goes into it from the wall',
    reason: 'Input is the wall’s side. The telescope gets what stands at OUTPUT.',
  },
] as const;

function matchTheMarks({ random }: ItemDraw) {
  const [spare, ...pairs] = pickSome(random, marks, 5);
  const where = pickOne(random, ['a battery pack', 'a mains adapter', 'a supply', 'a label']);
  return match({
    prompt: `You read ${where} for ${pickOne(random, telescopeNames)}. What does each mark tell you? One meaning is left over.`,
    explanation: 'Volts and polarity must be equal, amperes enough; mAh tell how long it lasts.',
    pairs,
    spare: spare === undefined ? [] : [spare.right],
  });
}

/** Labels and plates: what must be equal, what must be enough, and whose the mains is. */
export const labelsToRead: ItemFamily = {
  id: 'labels-to-read',
  lesson: 'power-without-smoke',
  objective: 'labels',
  skill: 'power',
  title: 'Reading labels and choosing a supply',
  version: 2,
  templates: {
    'which-serves': whichServes,
    'what-speaks-against': whatSpeaksAgainst,
    'point-at-the-label': pointAtTheLabel,
    'predict-the-current': predictTheCurrent,
    'match-the-marks': matchTheMarks,
  },
};
