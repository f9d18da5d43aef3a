import { brokenEdges, readySteps } from '../../assembly/graph';
import { standAfter } from '../../assembly/stand';
import type { AssemblyTask } from '../../assembly/steps';
import type { Random } from '../../variants/random';
import { choice, match, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { askedSpot, type KnownSpot } from '../what-is-in-the-case/asked-spot';
import { someTube } from '../what-is-in-the-case/item-tube';
import { askers } from '../what-is-in-the-case/askers';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawLegs } from '../../drawings/legs-drawing';
import { becauseOf, standStepName, standSteps, type StandStep } from '../../drawings/step-words';

const isStandStep = (step: string): step is StandStep => standSteps.some((one) => one === step);
const lower = (step: StandStep): string => standStepName[step].toLowerCase();

/** What can be forgotten and is missed once the mount is on. */
const forgettable = ['lock-spreader', 'lock-legs', 'tray-in'] as const;

/** A whole stand in a drawn order, with some of its steps left out. */
function workWithout(
  random: Random,
  task: AssemblyTask,
  missing: readonly StandStep[],
): StandStep[] {
  const whole: StandStep[] = [];
  while (whole.length < standSteps.length) {
    const next = random.pick(readySteps(task, whole).filter(isStandStep));
    if (next === undefined) break;
    whole.push(next);
  }
  return whole.slice(0, whole.indexOf('mount-on') + 1).filter((step) => !missing.includes(step));
}

const told = (steps: readonly StandStep[]): string => steps.map(lower).join('; ');

function doesItStand(draw: ItemDraw) {
  const { random } = draw;
  const { name, tubeType } = someTube(draw);
  const task: AssemblyTask = { tubeType, kind: 'build' };
  const missing = random.next() < 0.3 ? [] : pickSome(random, forgettable, 1);
  const done = workWithout(random, task, missing);
  const { tipped } = standAfter(done, 'packed');
  const [gone] = missing;
  const why =
    gone === undefined
      ? 'Spreader, locks and tray came before the load.'
      : `“${standStepName[gone]}” was left out: ${becauseOf(gone, 'mount-on')}`;
  const stands = {
    text: 'It bears the mount; next comes the bolt',
    reason: why,
  };
  const gives = (step: (typeof forgettable)[number]) => ({
    text: `It may give way: left out was “${standStepName[step]}”`,
    reason: step === gone ? why : `That was done. ${why}`,
  });
  const all = forgettable.map(gives);
  const right = tipped && gone !== undefined ? gives(gone) : stands;
  return choice({
    prompt: `${pickOne(random, askers)} built ${name}’s stand in this order: ${told(done)}. Now the mount’s weight is on it. What of the stand?`,
    explanation: `${why} Go over a stand that somebody else set up before you load it.`,
    right,
    wrong: [...all, stands].filter(({ text }) => text !== right.text),
  });
}

function whatWasLeftOut(draw: ItemDraw) {
  const { random } = draw;
  const { name, tubeType } = someTube(draw);
  const task: AssemblyTask = { tubeType, kind: 'build' };
  const missing = pickSome(random, forgettable, random.integer(1, 2));
  const done = workWithout(random, task, missing);
  const broken = brokenEdges(task, done).map(({ before }) => before);
  return several({
    prompt: `${pickOne(random, askers)} reports from ${name}’s stand: ${told(done)}. Tick all that should have been done before the mount went on, and was not.`,
    explanation: 'Before the load: legs spread, spreader down, height set, locks closed, tray in.',
    right: missing.map((step) => ({
      text: standStepName[step],
      reason: broken.includes(step)
        ? `It was left out: ${becauseOf(step, 'mount-on')}`
        : 'It was left out.',
    })),
    wrong: [
      ...done
        .filter((step) => step !== 'mount-on')
        .map((step) => ({ text: standStepName[step], reason: 'That was done.' })),
      { text: standStepName['bolt-mount'], reason: 'That comes after the mount has gone on.' },
    ],
  });
}

const standParts: readonly { name: string; job: string; reason: string }[] = [
  {
    name: 'The spreader',
    job: 'Holds the legs apart',
    reason: 'pressed down it locks, and the legs can neither close nor slide out.',
  },
  {
    name: 'A leg lock',
    job: 'Keeps a leg at its length',
    reason: 'open, the leg runs in under a load.',
  },
  {
    name: 'The tray',
    job: 'Braces the legs, and holds eyepieces',
    reason: 'it ties the three legs to each other.',
  },
  {
    name: 'The head of the tripod',
    job: 'Is the seat of the mount',
    reason: 'the mount sits on it, and the bolt comes through it.',
  },
  {
    name: 'The bolt',
    job: 'Holds the mount down on its seat',
    reason: 'without it the mount tips off as soon as the tube is on.',
  },
  {
    name: 'The foot of a leg',
    job: 'Stands on the ground, a corner of the triangle',
    reason: 'the weight must stay between the three of them.',
  },
  {
    name: 'The arm of the mount',
    job: 'Carries the tube beside the middle',
    reason: 'so the weight is not quite over the middle.',
  },
];

function partsOfTheStand({ random }: ItemDraw) {
  const [spare, ...four] = pickSome(random, standParts, 5);
  return match({
    prompt: `${pickOne(random, askers)} asks about ${four.map(({ name }) => name.toLowerCase()).join(', ')}. What does each of them do?`,
    explanation: 'From the ground up: feet, locks, spreader, tray, head, bolt, arm.',
    pairs: four.map(({ name, job, reason }) => ({ left: name, right: job, reason })),
    ...(spare === undefined ? {} : { spare: [spare.job] }),
  });
}

const places = ['head', 'spreader', 'lock', 'foot'] as const;
const asked: Readonly<Record<(typeof places)[number], { ask: string; where: string; is: string }>> =
  {
    head: {
      ask: 'where the mount will sit',
      where: 'on top, where the legs meet',
      is: 'the head of the tripod, the seat of the mount',
    },
    spreader: {
      ask: 'what is pressed down until it locks',
      where: 'at the bend of the bars between the legs',
      is: 'the spreader, which holds the legs apart',
    },
    lock: {
      ask: 'what is opened to make a leg longer',
      where: 'on the right leg, two thirds of the way down',
      is: 'a leg lock, which keeps a leg at its length',
    },
    foot: {
      ask: 'a corner of the triangle that the weight must stay inside',
      where: 'at the lower end of the left leg',
      is: 'a foot of the tripod, a corner of the triangle',
    },
  };

function pointAtTheStand({ random }: ItemDraw) {
  const what = pickOne(random, ['head', 'spreader', 'lock', 'foot']);
  const splayDeg = random.integer(16, 30);
  const { width, height, shapes, spots } = drawLegs(splayDeg);
  const known: KnownSpot<(typeof places)[number]>[] = places.map((place) => ({
    is: place,
    ...spots[place],
    where: asked[place].where,
    reason: `That is ${asked[place].is}.`,
  }));
  return point({
    prompt: `Point at ${asked[what].ask}.`,
    drawing: {
      width,
      height,
      shapes,
      alternative: `Two legs of a tripod from the side, ${String(splayDeg)}° from upright. They hang from a block on top. Two bars with a bend in the middle run between them. On each leg sits a catch, two thirds of the way down.`,
    },
    explanation:
      'On top the head; between the legs the spreader; on each leg a lock; below, the feet.',
    ...askedSpot(known, what),
  });
}

export const leftOut: ItemFamily = {
  id: 'left-out',
  lesson: 'standing-it-up',
  objective: 'order',
  skill: 'assemble',
  title: 'The parts of the stand, and what was left out',
  version: 1,
  templates: {
    'does-it-stand': doesItStand,
    'what-was-left-out': whatWasLeftOut,
    'parts-of-the-stand': partsOfTheStand,
    'point-at-the-stand': pointAtTheStand,
  },
};
