import type { Happening } from '../../power/act';
import type { PowerAction } from '../../power/power-bench';
import { choice, match, order, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { pickOne, pickSome } from '../pick-one';
import { benchSpots, drawBench, type LeftBench } from './draw-bench';
import { telescopeNames } from './draw-needs';
import { handControlIn, playABench, supplyIn, switchOn, type PlayedSupply } from './play-a-bench';

const rule =
  'The order: switch off, cells, hand control, supply, switch on. Nothing goes in or out while the switch is on.';

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
    explanation: rule,
    steps,
    rules: [
      { first: 0, then: hand, reason: 'what goes in while the switch is on goes in with a spark.' },
      { first: hand, then: plug, reason: 'one touch of the switch, and it would go in live.' },
      {
        ...{ first: checked, then: plug },
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
        ...{ first: 1, then: 2 },
        reason: 'half full, the holder would give the telescope what it should never get.',
      },
      { first: 2, then: 3, reason: 'only the new cells can tell how they lie.' },
      { first: 3, then: 4, reason: 'a minus on the meter must not reach the telescope.' },
      { first: 4, then: 5, reason: 'the switch comes last.' },
    ],
  });
}

const told = {
  hand: 'connects the hand control',
  supply: 'puts the pack’s plug in',
  on: 'switches on',
} as const;
type Move = keyof typeof told;
const actionOf: Readonly<Record<Move, PowerAction>> = {
  hand: handControlIn,
  supply: supplyIn,
  on: switchOn,
};
const moves: readonly [readonly Move[], ...(readonly Move[])[]] = [
  ['hand', 'supply', 'on'],
  ['supply', 'on', 'hand'],
  ['hand', 'on', 'supply'],
  ['on', 'hand', 'supply'],
];

type Outcome = Happening['code'] | 'runs';
const outcomes: Readonly<Partial<Record<Outcome, { text: string; reason: string }>>> = {
  runs: {
    text: 'It starts as it should',
    reason: 'Hand control, supply, switch: the order of the rule.',
  },
  'hand-control-live': {
    text: 'The hand control gets a spark',
    reason: 'It went in while the power was on: its contacts meet one after another.',
  },
  'supply-with-switch-on': {
    text: 'The computer gets its power with a spark at the plug',
    reason: 'The switch stood on as the supply went in.',
  },
  'reverse-polarity': {
    text: 'Plus and minus are exchanged, and it may be ruined',
    reason: 'The pack’s middle pin is minus, the socket’s is plus.',
  },
  'over-voltage': {
    text: 'Twice the volts reach it, and it may be ruined',
    reason: 'The pack has 24 V, the telescope is made for 12 V.',
  },
};
const worst = [
  'reverse-polarity',
  'over-voltage',
  'hand-control-live',
  'supply-with-switch-on',
] as const;

const packs: Readonly<Record<PlayedSupply, string>> = {
  sound: 'a pack of 12 V, middle pin +',
  exchanged: 'a pack of 12 V, middle pin −',
  strong: 'a pack of 24 V, middle pin +',
};

function predictTheStart({ random }: ItemDraw) {
  const supply = pickOne<PlayedSupply>(random, ['sound', 'sound', 'exchanged', 'strong']);
  // What the pack does is not mixed with what the order does.
  const order = supply === 'sound' ? pickOne(random, moves) : (['hand', 'supply', 'on'] as const);
  const { happened } = playABench(
    supply,
    order.map((move) => actionOf[move]),
  );
  const outcome: Outcome = worst.find((code) => happened.includes(code)) ?? 'runs';
  const said = `first ${told[order[0] ?? 'hand']}, then ${told[order[1] ?? 'supply']}, then ${told[order[2] ?? 'on']}`;
  const option = (code: Outcome) => ({
    text: outcomes[code]?.text ?? code,
    reason: code === outcome ? (outcomes[code]?.reason ?? '') : whyNot(code),
  });
  const others = (['runs', ...worst] as const).filter((code) => code !== outcome);
  return choice({
    prompt: `${pickOne(random, telescopeNames)} wants 12 V with plus in the middle. Somebody has ${packs[supply]}, its plug fits, and the switch is off. ${pickOne(random, ['Robin', 'Alex', 'Sam', 'Kim'])} ${said}. Predict what happens.`,
    explanation: rule,
    afterwards: {
      ...drawBench({ on: true, supply: true, handControl: true, cellsIn: true }),
      alternative: `The bench at the end, everything connected and the switch on. ${outcomes[outcome]?.text ?? ''}.`,
    },
    right: option(outcome),
    wrong: pickSome(random, others, 3).map((code) => ({
      ...option(code),
      ...(code === 'runs' && supply !== 'sound'
        ? { misconception: 'plug-fits-so-it-serves' as const }
        : {}),
    })),
  });
}

function whyNot(code: Outcome): string {
  switch (code) {
    case 'runs':
      return 'Something on the way was wrong: compare the pack with the socket, and the order with the rule.';
    case 'reverse-polarity':
      return 'The pack’s middle pin is that of the socket.';
    case 'over-voltage':
      return 'The pack has 12 V, as the telescope wants.';
    case 'hand-control-live':
      return 'No power was on when the hand control went in.';
    default:
      return 'The switch stood off when the supply went in.';
  }
}

/** What has to be put right first on a bench as it was left. */
function firstThing({ on, supply, cellsIn }: LeftBench) {
  if (on) return 'switch';
  if (supply && !cellsIn) return 'socket';
  if (!cellsIn) return 'holder';
  return 'handControl';
}

const lefts: readonly [LeftBench, ...LeftBench[]] = [
  { on: true, supply: true, handControl: false, cellsIn: true },
  { on: true, supply: false, handControl: true, cellsIn: false },
  { on: true, supply: true, handControl: true, cellsIn: false },
  { on: false, supply: true, handControl: true, cellsIn: false },
  { on: false, supply: true, handControl: false, cellsIn: false },
  { on: false, supply: false, handControl: true, cellsIn: false },
  { on: false, supply: false, handControl: false, cellsIn: true },
];
const because = {
  switch: 'The switch stands on. Nothing is plugged or pulled before it is off.',
  socket:
    'The holder has an empty bay and is plugged in. Its plug comes out before a cell goes in.',
  holder: 'Switch off and plug out: now the empty bay gets its cell.',
  handControl: 'Switch off, cells in, supply out: the hand control goes in first.',
} as const;

function firstOnTheBench({ random }: ItemDraw) {
  const left = pickOne(random, lefts);
  const first = firstThing(left);
  const spots = ['switch', 'socket', 'handControl', 'holder'] as const;
  const whenWrong = {
    switch: 'The switch stands off, as it should: it goes on last.',
    socket: left.supply ? 'The plug comes later.' : 'The supply goes in after the hand control.',
    handControl: left.handControl
      ? 'The hand control is in already.'
      : 'The hand control waits for what comes before it.',
    holder: left.cellsIn
      ? 'The holder is full.'
      : 'The empty bay waits: switch and plug come first.',
  };
  return point({
    prompt: `This is how ${pickOne(random, telescopeNames)}’s bench was left. You want to get it running. Point at what your hand goes to first.`,
    drawing: drawBench(left),
    explanation: rule,
    right: { ...benchSpots[first], reason: because[first] },
    wrong: spots
      .filter((spot) => spot !== first)
      .map((spot) => ({ ...benchSpots[spot], reason: whenWrong[spot] })),
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
    explanation: rule,
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
  version: 1,
  templates: {
    'switching-on': switchingOn,
    'changing-cells': changingCells,
    'predict-the-start': predictTheStart,
    'first-on-the-bench': firstOnTheBench,
    'why-this-order': whyThisOrder,
  },
};
