import { match, order } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { pickOne, pickSome } from '../../variants/pick-one';
import { telescopeNames } from './draw-needs';
import { firstOnTheBench } from './first-on-the-bench';
import { switchingRule } from './switching-rule';
import { predictTheStart } from './predict-the-start';

const evenings = [
  'on a cold field',
  'in the school yard',
  'behind the hall',
  'on the hill',
] as const;

function switchingOn({ random }: ItemDraw) {
  const holder = random.next() < 0.5;
  const supply = holder ? 'the holder’s plug' : 'the pack’s plug';
  const steps = [
    'See that the switch stands off',
    ...(holder
      ? ['Put the cells in, the holder unplugged', 'Read the holder on the meter']
      : ['Read the pack’s label against the plate']),
    'Connect the hand control',
    `Put ${supply} in`,
    'Switch on',
    'Slew once and watch the volts',
  ];
  const at = (text: string) => steps.findIndex((step) => step.startsWith(text));
  const hand = at('Connect');
  const plug = at('Put the ' + (holder ? 'holder’s' : 'pack’s'));
  const on = at('Switch on');
  const checked = holder ? at('Read the holder') : at('Read the pack');
  return order({
    prompt: `${pickOne(random, telescopeNames)} stands ${pickOne(random, evenings)} and is to get its power from ${holder ? 'a holder of cells' : 'a battery pack'}. Put the steps in order.`,
    explanation: switchingRule,
    steps,
    rules: [
      { first: 0, then: hand, reason: 'what goes in while the switch is on goes in with a spark.' },
      { first: hand, then: plug, reason: 'one touch of the switch, and it would go in live.' },
      {
        first: checked,
        then: plug,
        reason: 'what is wrong must be seen before it reaches the telescope.',
      },
      ...(holder
        ? [{ first: 1, then: checked, reason: 'an empty holder has nothing to read.' }]
        : []),
      { first: plug, then: on, reason: 'the switch is the one step that brings the power.' },
      { first: on, then: on + 1, reason: 'without power no motor turns.' },
    ],
  });
}

function changingCells({ random }: ItemDraw) {
  const why = pickOne(random, [
    'The cells are nearly empty',
    'The computer restarts at every slew',
    'You find a used cell among the fresh ones',
    'The meter says that one cell is turned',
  ]);
  return order({
    prompt: `${why}, and ${pickOne(random, telescopeNames)} is running. Put the steps of changing cells in order.`,
    explanation:
      'Power down first, then the plug, then the cells; the meter looks before the plug goes in again.',
    steps: [
      'Switch off',
      'Pull the holder’s plug',
      'Take all cells out and put eight fresh ones in',
      'Read the holder on the meter',
      'Put the holder’s plug in',
      'Switch on and align anew',
    ],
    rules: [
      { first: 0, then: 1, reason: 'pulled while the power flows, a plug sparks.' },
      {
        first: 1,
        then: 2,
        reason: 'half full, the holder would give the telescope what it should never get.',
      },
      { first: 2, then: 3, reason: 'only the new cells can tell how they lie.' },
      { first: 3, then: 4, reason: 'a minus on the meter must not reach the telescope.' },
      { first: 4, then: 5, reason: 'the switch comes last.' },
    ],
  });
}

const reasons = [
  {
    left: 'The switch is looked at first',
    right: 'in the dark nobody knows how it was left',
    reason: 'A switch that stands on makes every plug a live one.',
  },
  {
    left: 'The hand control goes in before the supply',
    right: 'its contacts meet one after another',
    reason: 'With the power on, the wrong ones would meet first.',
  },
  {
    left: 'The switch goes on last',
    right: 'it alone brings the power, cleanly and at once',
    reason: 'A plug that goes in live sparks on and off.',
  },
  {
    left: 'The holder is unplugged while cells go in',
    right: 'half full it gives what the telescope must never get',
    reason: 'With one cell turned or missing there is no telling what arrives.',
  },
  {
    left: 'The meter reads the holder before it is plugged in',
    right: 'a minus must not reach the telescope',
    reason: 'The sign shows exchanged plus and minus before any harm is done.',
  },
  {
    left: 'One slew at full speed before the alignment',
    right: 'a restart later would lose the alignment',
    reason: 'If the supply is too weak you learn it before the work, not after.',
  },
] as const;

function whyThisOrder({ random }: ItemDraw) {
  return match({
    prompt: `Why is it done so? Find the reason for each step of powering ${pickOne(random, telescopeNames)}.`,
    explanation: switchingRule,
    pairs: pickSome(random, reasons, 4),
  });
}

/** The order of connecting, and what goes wrong when it is another. */
export const orderOfSwitchingOn: ItemFamily = {
  id: 'order-of-switching-on',
  lesson: 'power-without-smoke',
  objective: 'order',
  skill: 'power',
  title: 'The order of switching on',
  version: 2,
  templates: {
    'switching-on': switchingOn,
    'changing-cells': changingCells,
    'predict-the-start': predictTheStart,
    'first-on-the-bench': firstOnTheBench,
    'why-this-order': whyThisOrder,
  },
};
