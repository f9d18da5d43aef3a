import type { Happening } from '../../power/act';
import type { PowerAction } from '../../power/power-bench';
import { choice } from '../build-item';
import type { ItemDraw } from '../item-family';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawBench } from './draw-bench';
import { telescopeNames } from './draw-needs';
import { handControlIn, playABench, supplyIn, switchOn, type PlayedSupply } from './play-a-bench';
import { switchingRule } from './switching-rule';

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

/** Predict what an order of connecting does, played on the engine's bench. */
export function predictTheStart({ random }: ItemDraw) {
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
    explanation:
      supply === 'sound'
        ? switchingRule
        : `The order is right, so look at the supply: ${outcomes[outcome]?.reason ?? switchingRule}`,
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
