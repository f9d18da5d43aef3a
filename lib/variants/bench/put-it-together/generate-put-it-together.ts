import { readySteps } from '../../../assembly/graph';
import {
  hazardMoments,
  isHazard,
  sightsAt,
  type HazardMoment,
  type Sight,
} from '../../../assembly/hazards';
import {
  neededSteps,
  strayStepsOf,
  type AssemblyStep,
  type AssemblyTask,
} from '../../../assembly/steps';
import { randomFrom, type Random } from '../../random';
import type { BenchTaskInput } from '../bench-variant';
import type { PutItTogetherTemplate, PutItTogetherVariant } from './put-it-together-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

const kindOf: Readonly<Record<PutItTogetherTemplate, AssemblyTask['kind']>> = {
  'from-the-case': 'build',
  'half-built': 'build',
  'mixed-case': 'build',
  'by-day': 'build-by-day',
  'take-down': 'take-down',
};

/** What can be left out without anybody noticing, until it bears a load. */
const forgettable: readonly AssemblyStep[] = [
  'lock-spreader',
  'lock-legs',
  'tray-in',
  'bolt-mount',
];

export function generatePutItTogether({
  seed,
  templates,
  kit,
}: BenchTaskInput<PutItTogetherTemplate>): PutItTogetherVariant {
  const random = randomFrom(seed);
  const template = random.pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  const { tubeType, name: kitName } = kit;
  const task: AssemblyTask = { tubeType, kind: kindOf[template] };
  const done = doneBefore(random, template, task);
  const left = neededSteps(task).filter((step) => !done.includes(step));
  return {
    lab: 'put-it-together',
    template,
    generatorVersion,
    kitName,
    ...task,
    done,
    cards: random.shuffle([...left, ...straysFor(random, template, task)]),
    moments: hazardMoments.map((moment) => ({ moment, seen: sightsFor(random, moment) })),
  };
}

/** A right order, drawn step by step among what is ready. */
function rightOrder(random: Random, task: AssemblyTask): AssemblyStep[] {
  const order: AssemblyStep[] = [];
  for (let next = random.pick(readySteps(task, order)); next !== undefined;) {
    order.push(next);
    next = random.pick(readySteps(task, order));
  }
  return order;
}

function doneBefore(
  random: Random,
  template: PutItTogetherTemplate,
  task: AssemblyTask,
): AssemblyStep[] {
  const order = rightOrder(random, task);
  const upTo = (step: AssemblyStep) => order.slice(0, order.indexOf(step) + 1);
  if (template === 'mixed-case') return upTo('bolt-mount');
  if (template !== 'half-built') return [];
  const standing = upTo(random.pick(['mount-on', 'bolt-mount'] as const) ?? 'mount-on');
  const forgotten = random.pick(
    forgettable.filter((step) => step !== 'bolt-mount' && standing.includes(step)),
  );
  return standing.filter((step) => step !== forgotten);
}

function straysFor(
  random: Random,
  template: PutItTogetherTemplate,
  task: AssemblyTask,
): readonly AssemblyStep[] {
  const strays = strayStepsOf(task);
  if (template === 'mixed-case' || strays.length <= 1) return strays;
  // The cap is what a daytime task is about; of the others two are enough.
  const [must, rest] = [
    strays.filter((step) => step === 'caps-off'),
    strays.filter((step) => step !== 'caps-off'),
  ];
  return [...must, ...random.shuffle(rest).slice(0, 2)];
}

/** One of each pair, with at least one hazard among them and at least one thing that is as it should be. */
function sightsFor(random: Random, moment: HazardMoment): Sight[] {
  const pairs = random.shuffle(sightsAt[moment]);
  const dangers = random.integer(1, pairs.length - 1);
  return random.shuffle(
    pairs.flatMap((pair, index) => {
      const sight = pair.find((one) => isHazard(one) === index < dangers);
      return sight === undefined ? [] : [sight];
    }),
  );
}
