import { capitalised } from '../../wording/capital';
import { edgesOf, readySteps, type AssemblyEdge } from '../../assembly/graph';
import type { AssemblyTask } from '../../assembly/steps';
import type { Random } from '../../variants/random';
import { choice, match, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { someTube } from '../what-is-in-the-case/item-tube';
import { askers } from '../what-is-in-the-case/askers';
import { pickOne, pickSome } from '../../variants/pick-one';
import {
  becauseOf,
  foldSteps,
  standStepName,
  standSteps,
  type StandStep,
} from '../../drawings/step-words';

const isStandStep = (step: string): step is StandStep => step in standStepName;
type StandEdge = { before: StandStep; after: StandStep };
const between =
  (steps: readonly string[]) =>
  (edge: AssemblyEdge): edge is StandEdge =>
    steps.includes(edge.before) && steps.includes(edge.after);
const edgesAmong = (task: AssemblyTask, steps: readonly StandStep[]): StandEdge[] =>
  edgesOf(task).filter(between(steps));

function putInOrder(draw: ItemDraw) {
  const { random } = draw;
  const { name, tubeType } = someTube(draw);
  const folding = random.next() < 0.35;
  const steps: readonly StandStep[] = folding ? foldSteps : standSteps;
  const edges = edgesAmong({ tubeType, kind: folding ? 'take-down' : 'build' }, steps);
  return order({
    prompt: `${pickOne(random, askers)} is to ${folding ? `pack up ${name}’s stand. The tube is already in its case` : `set up ${name}’s stand`}. Put the steps in order; more than one order may be right.`,
    explanation: folding
      ? 'What went on last comes off first, and legs fold only when nothing stands on them.'
      : 'From the ground upwards: nothing goes on what cannot bear it yet.',
    steps: steps.map((step) => standStepName[step]),
    rules: edges.map(({ before, after }) => ({
      first: steps.indexOf(before),
      then: steps.indexOf(after),
      reason: becauseOf(before, after),
    })),
  });
}

/** A right beginning of the work, so many steps long. */
function doneSoFar(random: Random, task: AssemblyTask, count: number): StandStep[] {
  const done: StandStep[] = [];
  while (done.length < count) {
    const next = random.pick(readySteps(task, done).filter(isStandStep));
    if (next === undefined) break;
    done.push(next);
  }
  return done;
}
const inWords = (done: readonly StandStep[]): string =>
  done.length === 0
    ? 'The tripod has just come out of its bag.'
    : `Done so far: ${done.map((step) => standStepName[step].toLowerCase()).join('; ')}.`;

/** What may be done now, and what may not, each with what it waits for. */
function readyAndNot(random: Random, task: AssemblyTask, count: number) {
  const done = doneSoFar(random, task, count);
  const ready = readySteps(task, done).filter(isStandStep);
  const waiting = standSteps.filter((step) => !done.includes(step) && !ready.includes(step));
  const why = (step: StandStep): string => {
    const missing = edgesAmong(task, standSteps).find(
      ({ before, after }) => after === step && !done.includes(before),
    );
    return missing === undefined
      ? 'All that it needs is done.'
      : `Too early. First: ${standStepName[missing.before].toLowerCase()}; ${becauseOf(missing.before, step)}`;
  };
  return { done, ready, waiting, why };
}

function whatNext(draw: ItemDraw) {
  const { random } = draw;
  const { name, tubeType } = someTube(draw);
  const task: AssemblyTask = { tubeType, kind: 'build' };
  const { done, ready, waiting, why } = readyAndNot(random, task, random.integer(1, 5));
  const right = random.pick(ready) ?? 'mount-on';
  const already = random.pick(done) ?? 'spread-legs';
  return choice({
    prompt: `${pickOne(random, askers)} builds ${name}’s stand. ${inWords(done)} Which of these may come next?`,
    explanation: `What is done must carry what comes. Ready now: ${ready.map((step) => standStepName[step].toLowerCase()).join('; ')}.`,
    right: { text: standStepName[right], reason: why(right) },
    wrong: [
      ...pickSome(random, waiting, 2).map((step) => ({
        text: standStepName[step],
        reason: why(step),
      })),
      { text: standStepName[already], reason: 'That has been done already.' },
    ],
  });
}

function allThatIsReady(draw: ItemDraw) {
  const { random } = draw;
  const { name, tubeType } = someTube(draw);
  const task: AssemblyTask = { tubeType, kind: 'build' };
  const { done, ready, waiting, why } = readyAndNot(random, task, random.integer(1, 3));
  return several({
    prompt: `${pickOne(random, askers)} and you build ${name}’s stand. ${inWords(done)} Tick every step that may be done now.`,
    explanation: 'More than one order is right: tick all that stand on nothing but what is done.',
    right: ready.map((step) => ({ text: standStepName[step], reason: why(step) })),
    wrong: [
      ...waiting.map((step) => ({ text: standStepName[step], reason: why(step) })),
      {
        text: 'Tighten the bolt with pliers',
        reason: 'Never: pliers crack the seat, and in the cold nobody undoes it.',
      },
    ],
  });
}

function whatComesOfIt(draw: ItemDraw) {
  const { random } = draw;
  const { name, tubeType } = someTube(draw);
  const edges = random.shuffle([
    ...edgesAmong({ tubeType, kind: 'build' }, standSteps),
    ...edgesAmong({ tubeType, kind: 'take-down' }, foldSteps),
  ]);
  const before = (edge: StandEdge) =>
    `${standStepName[edge.after]}; only then: ${standStepName[edge.before].toLowerCase()}`;
  const [spare, ...pairs] = edges.slice(0, 4);
  return match({
    prompt: `${pickOne(random, askers)} does things at ${name}’s stand the wrong way round. What is wrong with each?`,
    explanation: 'Ask of each step what it stands on.',
    pairs: pairs.map((edge) => ({
      left: before(edge),
      right: capitalised(becauseOf(edge.before, edge.after)),
      reason: `do it the other way round, since ${becauseOf(edge.before, edge.after)}`,
    })),
    ...(spare === undefined ? {} : { spare: [capitalised(becauseOf(spare.before, spare.after))] }),
  });
}

export const whatRestsOnWhat: ItemFamily = {
  id: 'what-rests-on-what',
  lesson: 'standing-it-up',
  objective: 'order',
  skill: 'assemble',
  title: 'Which step rests on which',
  version: 3,
  templates: {
    'put-in-order': putInOrder,
    'what-next': whatNext,
    'all-that-is-ready': allThatIsReady,
    'what-comes-of-it': whatComesOfIt,
  },
};
