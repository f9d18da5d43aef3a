import { edgesOf } from '../../assembly/graph';
import type { AssemblyStep } from '../../assembly/steps';
import { choice, match, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { cares, deeds, moments } from './cap-cases';
import { someTube } from './item-tube';
import { askers } from './askers';
import { pickOne, pickSome } from '../../variants/pick-one';

function mayTheCapComeOff(draw: ItemDraw) {
  const { random } = draw;
  const moment = pickOne(random, moments);
  const { name } = someTube(draw);
  const off = { text: `The caps of ${name} may come off now`, reason: moment.because };
  const stay = { text: `The caps of ${name} stay on for now`, reason: moment.because };
  return choice({
    prompt: `${moment.when}, ${pickOne(random, askers).toLowerCase()} wants to look through ${name}. What do you say?`,
    explanation:
      'Only one thing decides: whether the Sun has set. Tube and finder stay capped until then.',
    right: moment.sunDown ? off : stay,
    wrong: [
      moment.sunDown ? stay : off,
      {
        text: 'Only the cap of the finder may come off',
        reason: moment.sunDown
          ? `Both may. ${moment.because}`
          : `A finder is pointed at the sky as well. ${moment.because}`,
      },
      {
        text: 'They may, if you look for a second only',
        reason: moment.sunDown
          ? `No hurry is needed. ${moment.because}`
          : `One second of the Sun is too long. ${moment.because}`,
      },
    ],
  });
}

function whatIsWrong({ random }: ItemDraw) {
  return several({
    prompt: `${pickOne(random, askers)} lists what they did with the school’s telescope this week. Tick all that harms an eye or the telescope, out of ${pickOne(random, ['these', 'the list', 'this list', 'all this'])}.`,
    explanation: 'Caps on until the Sun has set; hands off glass; both hands under the tube.',
    right: pickSome(
      random,
      deeds.filter(({ safe }) => !safe),
      2,
    ),
    wrong: pickSome(
      random,
      deeds.filter(({ safe }) => safe),
      3,
    ),
  });
}

/** Steps before the caps come off, or after they go on, with words of this lesson. */
const words: Readonly<Partial<Record<AssemblyStep, string>>> = {
  'let-go': 'Let go of the tube, once clamp and stop screw hold it',
  'finder-on': 'Put the finder on',
  'low-eyepiece-in': 'Put the 25 mm eyepiece in',
  'caps-off': 'Take the dust caps off',
  'caps-on': 'Put the dust caps on',
  'eyepiece-out': 'Take the eyepiece out',
  'hold-tube': 'Hold the tube with both hands',
  'open-clamp': 'Open the clamp',
  'tube-off': 'Slide the tube out and into its case',
};
const becauseOf: Readonly<Partial<Record<AssemblyStep, string>>> = {
  'let-go': 'nothing is fitted to a tube that somebody still has to hold.',
  'finder-on': 'screws and fingers are kept away from open glass.',
  'low-eyepiece-in': 'an open tube fills with dust.',
  'caps-on': 'hands come near the glass only when it is covered.',
  'eyepiece-out': 'with both hands at the tube nobody can take an eyepiece out.',
  'hold-tube': 'a tube that nobody holds slides out of the open clamp and falls.',
  'open-clamp': 'the bar does not come out of a closed clamp.',
};

function capsInOrder(draw: ItemDraw) {
  const { tubeType, name } = someTube(draw);
  const down = draw.random.next() < 0.5;
  const steps: AssemblyStep[] = down
    ? ['caps-on', 'eyepiece-out', 'hold-tube', 'open-clamp', 'tube-off']
    : ['let-go', 'finder-on', 'low-eyepiece-in', 'caps-off'];
  const edges = edgesOf({ tubeType, kind: down ? 'take-down' : 'build' });
  const place = (step: AssemblyStep) => steps.indexOf(step) + (down ? 0 : 1);
  const inside = edges.filter(
    ({ before, after }) => steps.includes(before) && steps.includes(after),
  );
  const sunset = {
    first: 0,
    then: place('caps-off'),
    reason: 'caps stay on until the Sun has set.',
  };
  return order({
    prompt: `${pickOne(draw.random, askers)} helps with ${name}. ${down ? 'The evening is over' : 'The evening begins, and nobody has looked yet'}: put the steps in order.`,
    explanation: down
      ? 'Cover the glass first; hold the tube before its clamp is opened.'
      : 'Open glass last, and never before the Sun has set.',
    steps: [
      ...(down ? [] : ['Wait until the Sun has set']),
      ...steps.map((step) => words[step] ?? step),
    ],
    rules: [
      ...(down ? [] : [sunset]),
      ...inside.map(({ before, after }) => ({
        first: place(before),
        then: place(after),
        reason: becauseOf[before] ?? 'the one rests on the other.',
      })),
    ],
  });
}

function rightCare({ random }: ItemDraw) {
  const [spare, ...pairs] = pickSome(random, cares, 5);
  return match({
    prompt: `${pickOne(random, askers)} asks what to do: “${pairs[0]?.left ?? ''}.” Find the right answer to that and to three other cases.`,
    explanation: 'Caps on by day, hands off glass, both hands under a tube.',
    pairs,
    ...(spare === undefined ? {} : { spare: [spare.right] }),
  });
}

export const capsAndGlass: ItemFamily = {
  id: 'caps-and-glass',
  lesson: 'what-is-in-the-case',
  objective: 'caps',
  skill: 'safety',
  title: 'Caps, the Sun, and hands off glass',
  version: 1,
  templates: {
    'may-the-cap-come-off': mayTheCapComeOff,
    'what-is-wrong': whatIsWrong,
    'caps-in-order': capsInOrder,
    'right-care': rightCare,
  },
};
