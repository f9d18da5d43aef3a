import { handleTube } from '../../balance/handle-tube';
import { startOf, type BalanceAction, type BalanceBench } from '../../balance/tube-bench';
import { choice, match, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { grounds, one } from '../level-enough/words';
import { kilograms, pickKit, wholeOf } from './tube-case';
import { clampDrawing, clampSpots } from './clamp-drawing';

const partners = ['Your partner', 'A second person', 'The teacher', 'A classmate'] as const;

function putItIn({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const who = one(random, partners);
  return order({
    prompt: `The mount stands level ${one(random, grounds)}. ${who} helps you to put the tube of ${kit.name}, ${kilograms(kit.tube.massKg)}, on it. Put the work in order.`,
    explanation:
      'Two pairs of hands, the bar all the way in, clamp, stop screw, and only then let go.',
    steps: [
      `Open the clamp wide enough for the dovetail bar`,
      `${who} and you lift the tube, one hand under each end`,
      'Lay the bar into the clamp, flat, along its whole length',
      'Turn the clamp tight while the tube is still held',
      'Turn the stop screw in',
      'Let go, first a little, with a hand close below',
    ],
    rules: [
      { first: 0, then: 2, reason: 'the bar does not go into a shut clamp.' },
      { first: 1, then: 2, reason: 'the tube comes to the clamp in your hands.' },
      { first: 2, then: 3, reason: 'a clamp holds only a bar that lies in it.' },
      { first: 3, then: 4, reason: 'first what holds, then what catches.' },
      { first: 4, then: 5, reason: 'nobody lets go before both are done.' },
    ],
  });
}

/** A bench for what happens; its tube is balanced, so that only hand, clamp and screw decide. */
const bench: BalanceBench = {
  tube: { massKg: 2, alongMm: 250, aboveAxisMm: 0 },
  parts: [],
  bar: { leastMm: 200, mostMm: 300 },
  holdingTorqueNm: 0.3,
  range: { lowDeg: 0, highDeg: 90 },
  asksForesight: false,
  start: { clampMm: 250, on: [], handOn: true },
};

const ends = {
  fell: (name: string) => ({
    text: `The tube of ${name} slides out and falls`,
    reason: 'Nothing holds it: no hand, no clamp, no stop screw.',
  }),
  caught: (name: string) => ({
    text: `${name}’s tube slips until the stop screw catches it`,
    reason: 'The screw is what is left when everything else is forgotten. It must not be the plan.',
  }),
  held: (name: string) => ({
    text: `${name}’s tube rests in the hand that holds it`,
    reason: 'A hand under the tube: now the clamp may be open.',
  }),
};

function openTheClamp({ random, world }: ItemDraw) {
  const { name } = pickKit(random, world);
  const handOn = random.next() < 0.4;
  const stopIn = random.next() < 0.5;
  const actions: BalanceAction[] = [
    ...(stopIn ? [] : [{ do: 'stop', in: false } as const]),
    ...(handOn ? [] : [{ do: 'hand', on: false } as const]),
    { do: 'clamp', open: true },
  ];
  const state = actions.reduce(
    (was, action) => handleTube(bench, was, action).state,
    startOf(bench),
  );
  const outcome = state.fallen ? 'fell' : handOn ? 'held' : 'caught';
  const others = (['fell', 'caught', 'held'] as const).filter((one) => one !== outcome);
  const because = {
    fell: 'Here something holds it still.',
    caught: handOn
      ? 'It does not slip: a hand is under it.'
      : 'The stop screw is out, so it catches nothing.',
    held: 'No hand is under it.',
  };
  const misled =
    outcome === 'fell'
      ? [
          {
            text: `Nothing: the grease in the clamp keeps ${name} where it is`,
            reason: 'An open clamp holds nothing, least of all a tube that is raised.',
            misconception: 'stop-screw-is-spare' as const,
          },
        ]
      : [
          {
            text: `Nothing: the clutch keeps ${name} where it is`,
            reason:
              'The clutch holds the clamp at an altitude. It does not hold the tube in the clamp.',
          },
        ];
  return choice({
    prompt: `${name} sits in its clamp ${one(random, grounds)}, its stop screw ${stopIn ? 'in' : 'out'}. ${handOn ? 'One hand is under the tube.' : 'No hand is on the tube.'} You open the clamp. What happens?`,
    explanation:
      'Hand under it first, then the clamp. The stop screw stays in, except while you slide on purpose with the tube held.',
    right: ends[outcome](name),
    wrong: [
      ...others.map((other) => ({ ...ends[other](name), reason: because[other] })),
      ...misled,
    ],
  });
}

function pointAtIt({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const asked = one(random, [
    { id: 'stop', does: 'catches the tube when the clamp is loose' },
    { id: 'clamp', does: 'grips the bar, and is opened to slide the tube' },
    { id: 'clutch', does: 'holds the tube at its altitude by friction' },
    { id: 'bar', does: 'slides in the clamp, screwed to the tube' },
  ] as const);
  const spot = ({ x, y, where, name, does }: (typeof clampSpots)[number]) => ({
    x,
    y,
    where,
    reason: `That is the ${name}: it ${does}.`,
  });
  const right = clampSpots.find(({ id }) => id === asked.id);
  if (right === undefined) throw new Error('the drawing shows every part that is asked for');
  return point({
    prompt: `${kit.name}’s tube, cut across, in its clamp ${one(random, grounds)}. Point at the part that ${asked.does}.`,
    drawing: clampDrawing,
    explanation:
      'Bar in clamp, clamp screw tight, stop screw in. The clutch is another thing: it holds the altitude.',
    right: spot(right),
    wrong: clampSpots.filter(({ id }) => id !== asked.id).map(spot),
  });
}

function goodPractice({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const kg = kilograms(wholeOf(kit).massKg);
  const good = [
    {
      text: `Two people lift ${kit.name}’s tube`,
      reason: `${kg} at arm’s length is much, and one can see what the other cannot.`,
    },
    {
      text: 'A hand stays under the tube while a part goes on',
      reason: 'The balance changes at once.',
    },
    {
      text: 'Level the tube before the clamp is opened',
      reason: 'A raised tube runs down an open clamp.',
    },
    {
      text: 'Let go little by little, a hand close below',
      reason: 'Then a heavy end is caught before it swings.',
    },
    {
      text: 'Caps on until the Sun has set',
      reason: 'A tube being handled can sweep across the Sun.',
    },
  ];
  const bad = [
    {
      text: 'Leave the stop screw out, since the clamp is tight',
      reason: 'A clamp can loosen. The screw is there for that day.',
      misconception: 'stop-screw-is-spare' as const,
    },
    {
      text: 'Open the clamp with the tube raised high',
      reason: 'The tube runs down at once, onto whoever stands behind it.',
    },
    {
      text: `Carry ${kit.name} by its finder`,
      reason: 'A finder is held by two small screws, and its setting is lost.',
    },
    {
      text: 'Let go all at once to see what happens',
      reason: 'A heavy end swings and can hit a face.',
    },
    {
      text: 'Turn the clutch hard, so that balance does not matter',
      reason: 'It still pulls, and it will slip when nobody looks.',
      misconception: 'tighter-clutch-cures' as const,
    },
  ];
  return several({
    prompt: `${kit.name} goes onto its mount ${one(random, grounds)}. Which of these are good practice?`,
    explanation: 'Two to lift, a hand below, level before sliding, stop screw in, caps on.',
    right: random.shuffle(good).slice(0, 3),
    wrong: random.shuffle(bad).slice(0, 2),
  });
}

function matchParts({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const all = [
    {
      left: 'Dovetail bar',
      right: 'Lies in the clamp, screwed to the tube',
      reason: 'its slanted sides keep it from lifting out.',
    },
    {
      left: 'Clamp screw',
      right: 'Presses on the bar so that it cannot slide',
      reason: 'open it only with a hand under the tube.',
    },
    {
      left: 'Stop screw',
      right: 'Catches the bar if the clamp is loose',
      reason: 'it is the second thing between the tube and the ground.',
    },
    {
      left: 'Altitude clutch',
      right: 'Holds the tube at its height by friction',
      reason: 'it does not hold the tube in the clamp.',
    },
    {
      left: 'A hand under the tube',
      right: 'Takes the weight while anything is loose',
      reason: 'no screw is as quick as a hand.',
    },
    {
      left: 'Strap weight',
      right: 'Makes the light end heavier',
      reason: 'where the bar is too short to slide far enough.',
    },
  ];
  return match({
    prompt: `What does each of these do when ${kit.name}’s tube is put on ${one(random, grounds)}?`,
    explanation: 'What holds, what catches, and what only rubs: three different things.',
    pairs: random.shuffle(all).slice(0, 4),
    spare: ['Turns the image the right way up'],
  });
}

/** From the case into the clamp, and nothing on the ground. */
export const intoTheClamp: ItemFamily = {
  id: 'into-the-clamp',
  lesson: 'tube-on-and-balanced',
  objective: 'hold',
  skill: 'safety',
  title: 'Into the clamp, and held',
  version: 1,
  templates: {
    'put-it-in': putItIn,
    'open-the-clamp': openTheClamp,
    'point-at-it': pointAtIt,
    'good-practice': goodPractice,
    'match-parts': matchParts,
  },
};
