import { choice, match, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawField, fieldSpots, fieldThings } from './draw-field';
import { telescopeNames } from './draw-needs';
import { dangerous, harmless } from './sights-of-power';

const word =
  'Students use batteries. The mains outdoors is the teacher’s, dry and on a protected socket, by local electrical rules and a qualified person’s word.';

function whatIsDangerous({ random }: ItemDraw) {
  return several({
    prompt: `You look round ${pickOne(random, telescopeNames)} before it is switched on. Tick all that must be stopped first.`,
    explanation: 'Stop it, say so, and fetch the teacher where mains or a damaged pack is about.',
    right: pickSome(random, dangerous, random.integer(2, 3)),
    wrong: pickSome(random, harmless, 3),
  });
}

type Case = { asks: string; right: string; why: string };
const cases: readonly [Case, ...Case[]] = [
  {
    asks: 'The cells are empty. A friend has a mains adapter with the right label and a long lead.',
    right: 'Leave it, and ask the teacher for fresh cells',
    why: 'The label may agree and it is still the mains, outdoors, in a student’s hands.',
  },
  {
    asks: 'The teacher’s adapter hangs on a socket that switches off again and again.',
    right: 'Leave it off, and let a qualified person look',
    why: 'A residual-current device that trips has found a leak. Switching it on again tries its luck with somebody’s life.',
  },
  {
    asks: 'The holder feels hot and smells.',
    right: 'Step back, say so, and let an adult deal with it',
    why: 'Hot cells may leak or burst. Warn the others first; hands keep off.',
  },
  {
    asks: 'White crust sits on a cell in the holder.',
    right: 'Do not touch it; show it to an adult',
    why: 'It has leaked. What leaks out burns skin and eyes.',
  },
  {
    asks: 'A small round cell from the red dot is missing, and a toddler was near.',
    right: 'Tell an adult at once, who calls for medical help',
    why: 'A swallowed button cell burns inside within hours. That is never waited out.',
  },
  {
    asks: 'It starts to drizzle, and the teacher’s adapter lies by the tripod.',
    right: 'Keep hands off, and call the teacher to cut the power',
    why: 'Wet mains is not for students’ hands. The teacher switches it off at the dry end.',
  },
];
const tempting = [
  {
    text: 'Carry on: it has only twelve volts',
    reason: 'Low volts can burn and start a fire, and an adapter’s other side is the mains.',
    misconception: 'low-volts-cannot-hurt' as const,
  },
  {
    text: 'Put a bag over it and go on observing',
    reason: 'A bag holds in damp and heat, and hides what is going wrong.',
  },
  {
    text: 'Pull it out quickly yourself',
    reason: 'Hands are the wrong tool where things are hot, wet or leaking.',
  },
  {
    text: 'Try once more and see whether it happens again',
    reason: 'The first sign was the warning. The second may be the accident.',
  },
];

function whatDoYouDo({ random }: ItemDraw) {
  const one = pickOne(random, cases);
  return choice({
    prompt: `At ${pickOne(random, telescopeNames)}: ${one.asks} What do you do?`,
    explanation: word,
    right: { text: one.right, reason: one.why },
    wrong: pickSome(random, tempting, 3),
  });
}

function pointAtTheDanger({ random }: ItemDraw) {
  const unsafe = pickOne(random, fieldThings);
  const whyUnsafe = {
    lead: 'Whoever trips over it pulls the plug out live, and the telescope over.',
    cells: 'A coin across both ends of a cell shorts it: it gets hot enough to burn.',
    adapter: 'Mains and water can kill. Keep off, and call the teacher.',
    pack: 'A swollen pack may burst into fire. Keep off, and call the teacher.',
  };
  const spot = (thing: (typeof fieldThings)[number]) => {
    const { x, y, where } = fieldSpots[thing];
    const reason =
      thing === unsafe ? whyUnsafe[thing] : `That is as it should be: ${fieldSpots[thing].safe}.`;
    return { x, y, where, reason };
  };
  return point({
    prompt: `You come to ${pickOne(random, telescopeNames)} at dusk. One thing here must be put right before anything else. Point at it.`,
    drawing: drawField(unsafe),
    explanation: whyUnsafe[unsafe],
    right: spot(unsafe),
    wrong: fieldThings.filter((thing) => thing !== unsafe).map(spot),
  });
}

const signs = [
  {
    left: 'A socket’s protection switches off by itself',
    right: 'leave it off, a qualified person looks',
    reason: 'A residual-current device that trips has found a leak.',
  },
  {
    left: 'A cell has leaked',
    right: 'do not touch, an adult cleans up with gloves',
    reason: 'What leaks out burns skin and eyes.',
  },
  {
    left: 'A pack has swollen',
    right: 'never charge or use it again, keep it away from all that burns',
    reason: 'It may catch fire; an adult takes it away by local rules.',
  },
  {
    left: 'A button cell may have been swallowed',
    right: 'medical help at once',
    reason: 'It burns inside within hours.',
  },
  {
    left: 'A lead shows bare wire',
    right: 'out of use until it is replaced',
    reason: 'Bare wires short the pack.',
  },
  {
    left: 'Alkaline cells are empty',
    right: 'into the collecting box, never into a charger',
    reason: 'Charged, they get hot, leak or burst.',
  },
] as const;

function matchTheSigns({ random }: ItemDraw) {
  return match({
    prompt: `While you power ${pickOne(random, telescopeNames)} you may meet these. What is right for each?`,
    explanation: word,
    pairs: pickSome(random, signs, 4),
  });
}

function whenItSmokes({ random }: ItemDraw) {
  const what = pickOne(random, [
    'A thin smoke rises from the holder',
    'The pack smells burnt and feels hot',
    'A plug glows and crackles',
    'There is a hiss from the box of cells',
  ]);
  return order({
    prompt: `${what} while ${pickOne(random, telescopeNames)} runs. Put in order what is done.`,
    explanation: 'People first, then the power, then the things; and nobody uses it again untold.',
    steps: [
      'Take your hands off and say “stop” aloud',
      'All step back, and the teacher comes',
      'The teacher cuts the power where it is safe to do so',
      'What was hot cools down untouched, away from all that burns',
      'It is written down and marked “out of use”',
    ],
    rules: [
      { first: 0, then: 1, reason: 'nobody steps back who has not been warned.' },
      { first: 1, then: 2, reason: 'first the people, then the power.' },
      { first: 2, then: 3, reason: 'it does not cool while the power is on.' },
      { first: 3, then: 4, reason: 'nobody handles it while it is hot.' },
    ],
  });
}

/** Dangers of cells and of the mains outdoors, and who decides. */
export const powerHazards: ItemFamily = {
  id: 'power-hazards',
  lesson: 'power-without-smoke',
  objective: 'hazards',
  skill: 'safety',
  title: 'What can burn, shock or trip',
  version: 1,
  templates: {
    'what-is-dangerous': whatIsDangerous,
    'what-do-you-do': whatDoYouDo,
    'point-at-the-danger': pointAtTheDanger,
    'match-the-signs': matchTheSigns,
    'when-it-smokes': whenItSmokes,
  },
};
