import { capitalised } from '../../wording/capital';
import { standAfter } from '../../assembly/stand';
import { assemblySteps, type AssemblyStep } from '../../assembly/steps';
import { packedUp, packUpSteps, type PackUpStep } from '../../rehearsal/pack-up';
import type { Random } from '../../variants/random';
import { choice, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { telescopeNames as scopes } from '../power-without-smoke/draw-needs';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawStand, standSpots, type StandPart } from '../../drawings/draw-stand';
import { mustPrecede, readyToDo, whyBefore, whyNotYet } from '../../drawings/pack-up-graph';
import { consequences, packUpName } from '../../drawings/pack-up-words';

const rule =
  'Level with the motors, switch off, leads out; caps, eyepiece; hold, open, lift; bolt, mount, tray, legs; and last the ground.';

function inOrder({ random }: ItemDraw) {
  const chosen = pickSome(random, packUpSteps, 6).sort(
    (a, b) => packUpSteps.indexOf(a) - packUpSteps.indexOf(b),
  );
  // A rule that follows from two others need not be told.
  const rules = chosen.flatMap((first, i) =>
    chosen.flatMap((then, j) =>
      mustPrecede(first, then) &&
      !chosen.some((between) => mustPrecede(first, between) && mustPrecede(between, then))
        ? [{ first: i, then: j, reason: whyBefore(first, then) }]
        : [],
    ),
  );
  return order({
    prompt: `It is late, and ${pickOne(random, scopes)} is to be packed up. Here are six of the steps. Put them in a safe order.`,
    explanation: rule,
    steps: chosen.map(packUpName),
    rules,
  });
}

/** An order that keeps all rules up to some step, drawn by chance. */
function partWay(random: Random, count: number): PackUpStep[] {
  const done: PackUpStep[] = [];
  while (done.length < count) {
    const next = random.pick(readyToDo(done));
    if (next === undefined) break;
    done.push(next);
  }
  return done;
}

const listed = (steps: readonly PackUpStep[]): string =>
  steps.map((step) => packUpName(step).toLowerCase()).join(', ');

function whatNext({ random }: ItemDraw) {
  const done = partWay(random, random.integer(2, 9));
  const right = random.pick(readyToDo(done)) ?? 'look-over-the-ground';
  const notYet = packUpSteps.filter(
    (step) => !done.includes(step) && whyNotYet(step, done) !== null,
  );
  return choice({
    prompt: `Packing up ${pickOne(random, scopes)}, done so far: ${listed(done)}. Which of these may come next?`,
    explanation: rule,
    right: { text: packUpName(right), reason: 'All that it rests on has been done.' },
    wrong: pickSome(random, notYet, 3).map((step) => ({
      text: packUpName(step),
      reason: capitalised(whyNotYet(step, done) ?? rule),
    })),
  });
}

function allThatMayCome({ random }: ItemDraw) {
  // At these places more than one thing may be done.
  for (;;) {
    const done = partWay(random, random.integer(0, 5));
    const ready = readyToDo(done);
    const notYet = packUpSteps.filter((step) => !done.includes(step) && !ready.includes(step));
    if (ready.length < 2) continue;
    return several({
      prompt: `Packing up ${pickOne(random, scopes)}, done so far: ${done.length === 0 ? 'nothing yet' : listed(done)}. Tick all that may be done now.`,
      explanation: rule,
      right: ready.map((step) => ({
        text: packUpName(step),
        reason: `${packUpName(step)}: all that it rests on has been done.`,
      })),
      wrong: pickSome(random, notYet, 3).map((step) => ({
        text: packUpName(step),
        reason: capitalised(whyNotYet(step, done) ?? rule),
      })),
    });
  }
}

/** Two steps done the wrong way round, and what is seen of it. */
const swaps: readonly [
  readonly [PackUpStep, PackUpStep],
  ...(readonly [PackUpStep, PackUpStep])[],
] = [
  ['hold-tube', 'open-clamp'],
  ['tube-off', 'unbolt-mount'],
  ['mount-off', 'tray-out'],
  ['switch-off', 'unplug-hand-control'],
  ['fold-legs', 'look-over-the-ground'],
  ['caps-on', 'unplug-supply'],
  ['switch-off', 'caps-on'],
];

const isAssembly = (step: PackUpStep): step is AssemblyStep =>
  assemblySteps.some((one) => one === step);

type Ending = 'tube-falls' | 'stand-goes-over' | 'spark' | 'left-behind' | 'nothing';

/** What comes of an order, told from the stand that it leaves and from the rules that it breaks. */
function endingOf(steps: readonly PackUpStep[]): Ending {
  const stand = standAfter(steps.filter(isAssembly), 'built');
  if (stand.tube === 'fallen') return 'tube-falls';
  if (stand.tipped) return 'stand-goes-over';
  const { broken } = packedUp(steps);
  if (broken.some(({ after }) => after === 'unplug-hand-control')) return 'spark';
  if (broken.some(({ after }) => after === 'look-over-the-ground')) return 'left-behind';
  return 'nothing';
}

const endings: Readonly<Record<Ending, { text: string; not: string }>> = {
  'tube-falls': { text: 'The tube falls', not: 'Hands or the clamp held the tube all the time.' },
  'stand-goes-over': {
    text: 'The stand goes over',
    not: 'Nothing was undone below a load.',
  },
  spark: {
    text: 'The hand control gets a spark',
    not: 'The power was off when its plug came out.',
  },
  'left-behind': {
    text: 'Things stay in the grass',
    not: 'The ground was looked over when all had been lifted.',
  },
  nothing: {
    text: 'Nothing bad: the order may be so',
    not: 'One step came before what it rests on.',
  },
};

function predictTheEnd({ random }: ItemDraw) {
  const [a, b] = pickOne(random, swaps);
  const steps = packUpSteps.filter((step) => step !== b);
  steps.splice(steps.indexOf(a), 0, b);
  const ending = endingOf(steps);
  const at = steps.indexOf(b);
  const shown = steps.slice(Math.max(0, at - 2), at + 2);
  const wrong = (
    ['tube-falls', 'stand-goes-over', 'spark', 'left-behind', 'nothing'] as const
  ).filter((one) => one !== ending);
  const told = ending === 'nothing' ? 'No rule is broken.' : capitalised(consequences(a, b));
  return choice({
    prompt: `${pickOne(random, scopes)} is packed up by the rules, but one part of it goes like this: ${listed(shown)}. Predict what comes of it.`,
    explanation: rule,
    afterwards: drawStand(standAfter(steps.slice(0, at + 1).filter(isAssembly), 'built')),
    right: { text: endings[ending].text, reason: told },
    wrong: pickSome(random, wrong, 3).map((one) => ({
      text: endings[one].text,
      reason: endings[one].not,
    })),
  });
}

/** The part that a hand goes to for a step. */
const partOf: Readonly<Partial<Record<PackUpStep, StandPart>>> = {
  'switch-off': 'switch',
  'unplug-supply': 'supply',
  'hold-tube': 'tube',
  'unbolt-mount': 'bolt',
};
const whenWrong: Readonly<Record<StandPart, string>> = {
  tube: 'The tube is not what is next.',
  clamp: 'The clamp is opened only by whoever already holds the tube.',
  bolt: 'The bolt waits until the tube is off.',
  tray: 'The tray braces the legs until the mount is off.',
  switch: 'The switch is not what is next.',
  handControl: 'The hand control is not what is next.',
  supply: 'The supply is not what is next.',
};

function whereTheHandGoes({ random }: ItemDraw) {
  const next = pickOne<PackUpStep>(random, ['switch-off', 'hold-tube', 'unbolt-mount']);
  // Caps and eyepiece are done early, so that one thing alone is next.
  const done: PackUpStep[] = [
    ...packUpSteps.slice(0, packUpSteps.indexOf(next)),
    ...(next === 'switch-off' ? (['caps-on', 'eyepiece-out'] as const) : []),
  ];
  const stand = standAfter(done.filter(isAssembly), 'built');
  const leads = {
    on: !done.includes('switch-off'),
    supply: !done.includes('unplug-supply'),
    handControl: !done.includes('unplug-hand-control'),
  };
  const right = partOf[next] ?? 'tube';
  const there: readonly StandPart[] = [
    ...(stand.tube === 'away' ? [] : (['tube', 'clamp'] as const)),
    ...(['bolt', 'tray', 'switch'] as const),
    ...(leads.handControl ? (['handControl', 'supply'] as const) : []),
  ];
  return point({
    prompt: `${pickOne(random, scopes)} is being packed up. Its caps are on and its eyepiece is out. Point at what a hand goes to next.`,
    drawing: drawStand(stand, leads),
    explanation: `Next: ${packUpName(next).toLowerCase()}. ${rule}`,
    right: { ...standSpots[right], reason: `${packUpName(next)}: all that it rests on is done.` },
    wrong: there
      .filter((part) => part !== right)
      .map((part) => ({ ...standSpots[part], reason: whenWrong[part] })),
  });
}

/** Packing up: what rests on what at the end of an evening. */
export const packingUp: ItemFamily = {
  id: 'packing-up',
  lesson: 'the-night',
  objective: 'pack-up',
  skill: 'safety',
  title: 'Packing up in a safe order',
  version: 2,
  templates: {
    'in-order': inOrder,
    'what-next': whatNext,
    'all-that-may-come': allThatMayCome,
    'predict-the-end': predictTheEnd,
    'where-the-hand-goes': whereTheHandGoes,
  },
};
