import { driftTimeSeconds } from '../../optics/drift-time';
import { skyTargets, type SkyTarget } from '../../optics/sky-targets';
import { trueFieldArcmin } from '../../optics/true-field';
import { choice, numeric, order } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { viewDrawing } from './view-drawing';
import { eyepieceOf, inNumber, soldFocalLengths, usualFieldDeg } from './words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

/** A kit with one of the eyepieces of 50°, and the sky that it shows. */
function drawField({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const focalLengthMm = pickOne(random, soldFocalLengths);
  const field = trueFieldArcmin(kit, { focalLengthMm, apparentFieldDeg: usualFieldDeg });
  return { kit, focalLengthMm, field };
}

/** What the sky turns at the celestial equator in a minute of time. */
const arcminAMinute = 15;
const minutesOf = (fieldArcmin: number, declinationDeg: number): number =>
  driftTimeSeconds(fieldArcmin, declinationDeg) / 60;
const declination = ({ declinationDeg }: Pick<SkyTarget, 'declinationDeg'>): string =>
  `${declinationDeg < 0 ? '−' : '+'}${String(Math.abs(declinationDeg))}°`;

function howLong(draw: ItemDraw) {
  const { kit, focalLengthMm, field } = drawField(draw);
  const shown = Math.round(field);
  const key = minutesOf(shown, 0);
  return numeric({
    prompt: `With ${eyepieceOf(focalLengthMm)} ${kit.name} shows ${String(shown)}′ of sky. The motors are off. How long does a star near the celestial equator take from edge to edge, right through the middle?`,
    unit: 'minutes',
    key,
    tolerance: { mode: 'relative', full: 0.08, zero: 0.3 },
    explanation: `There the sky turns ${String(arcminAMinute)}′ in a minute: ${String(shown)}′ ÷ ${String(arcminAMinute)}′ is ${inNumber(key, 1)} minutes.`,
    slips: [
      {
        gives: Number((shown / 60).toFixed(3)),
        reason: 'That takes 1° a minute. The sky turns 15° in an hour: 15′ in a minute.',
      },
      {
        gives: Number((shown * arcminAMinute).toFixed(0)),
        reason: 'That multiplies. A wide field takes longer; divide it by 15′ a minute.',
      },
      {
        gives: Number((key / 2).toFixed(3)),
        reason: 'That is from the middle to the edge. From edge to edge it is twice as long.',
      },
    ],
  });
}

function fieldFromTime(draw: ItemDraw) {
  const { kit, focalLengthMm, field } = drawField(draw);
  const seconds = Math.round(driftTimeSeconds(field, 0));
  const key = (seconds / 60) * arcminAMinute;
  return numeric({
    prompt: `The label has rubbed off an eyepiece. In ${kit.name}, motors off, a star near the celestial equator takes ${String(seconds)} seconds from edge to edge. How wide is the field, in arcminutes?`,
    unit: 'arcminutes',
    key,
    tolerance: { mode: 'relative', full: 0.04, zero: 0.2 },
    explanation: `The sky turns 15′ in 60 seconds, a quarter of an arcminute each second: ${String(seconds)} ÷ 4 is ${inNumber(key, 1)}′. It is ${eyepieceOf(focalLengthMm)}.`,
    slips: [
      { gives: seconds, reason: 'That is one arcminute a second. The sky turns 15′ in a minute.' },
      {
        gives: seconds * 15,
        reason: 'That is the field in arcseconds: the sky turns 15″ a second. An arcminute is 60″.',
      },
    ],
  });
}

const from = (random: ItemDraw['random'], count: number): SkyTarget[] => {
  for (;;) {
    const some = random.shuffle(skyTargets).slice(0, count);
    const times = some
      .map(({ declinationDeg }) => minutesOf(100, declinationDeg))
      .sort((a, b) => a - b);
    // No two so alike that a stopwatch in a hand could not part them.
    if (times.every((one, i) => i === 0 || one / (times[i - 1] ?? one) > 1.05)) return some;
  }
};

function longestStay(draw: ItemDraw) {
  const { random } = draw;
  const { kit, focalLengthMm, field } = drawField(draw);
  const some = from(random, 3).sort(
    (a, b) => Math.abs(b.declinationDeg) - Math.abs(a.declinationDeg),
  );
  const [right, ...wrong] = some.map((target) => ({
    text: `${capitalised(target.name)}, declination ${declination(target)}`,
    reason: `It needs ${inNumber(minutesOf(field, target.declinationDeg), 1)} minutes for ${inNumber(field)}′.`,
  }));
  if (right === undefined) throw new RangeError('no targets');
  return choice({
    prompt: `At the Earth’s equator, where all of these rise, the motors are off, and ${eyepieceOf(focalLengthMm)} is in ${kit.name}. Which of these stays in view longest on its way through the middle?`,
    explanation:
      'Everything goes round a pole once in a day, and near a pole the circle is small. The farther from the equator, north or south, the slower the drift.',
    right,
    wrong,
  });
}

function shortestFirst(draw: ItemDraw) {
  const { random } = draw;
  const { kit, focalLengthMm, field } = drawField(draw);
  const some = from(random, 4).sort(
    (a, b) => Math.abs(a.declinationDeg) - Math.abs(b.declinationDeg),
  );
  const stay = (target: SkyTarget) => `${inNumber(minutesOf(field, target.declinationDeg), 1)} min`;
  return order({
    prompt: `At the Earth’s equator ${kit.name} stands still with ${eyepieceOf(focalLengthMm)} in it. These cross the field one night. Put them in order, the shortest stay first.`,
    explanation: `From edge to edge they take ${some.map((one) => `${stay(one)} (${one.name})`).join(', ')}. Only the distance from the celestial equator counts.`,
    steps: some.map((one) => `${capitalised(one.name)}, declination ${declination(one)}`),
    rules: some.slice(1).map((one, first) => ({
      first,
      then: first + 1,
      reason: `it lies nearer to the equator, where the sky sweeps by fastest; the other stays ${stay(one)}.`,
    })),
  });
}

/** Predict, then see: how far it has gone while nobody looked. */
function lookedAway(draw: ItemDraw) {
  const { random } = draw;
  for (;;) {
    const { kit, focalLengthMm, field } = drawField(draw);
    const minutes = random.integer(1, 9);
    const gone = (minutes * 60 * field) / driftTimeSeconds(field, 0);
    const share = gone / (field / 2);
    if (share > 3 || (share > 0.85 && share < 1.15) || share < 0.15) continue;
    const inView = share < 1;
    const [distance, edge] = [inNumber(gone), inNumber(field / 2)];
    const still = `Still in view: ${distance}′ from the middle, with the edge at ${edge}′`;
    const out = `Out of view: ${distance}′ from the middle, with the edge at ${edge}′`;
    return choice({
      prompt: `A star near the celestial equator is in the middle of ${kit.name}’s ${String(focalLengthMm)} mm eyepiece, which shows ${inNumber(field)}′. The motors are off. You look again after ${String(minutes)} min. Where is it?`,
      explanation: `It drifts 15′ in a minute: ${String(minutes)} × 15′ is ${distance}′. From the middle to the edge it is half the field, ${edge}′.`,
      right: {
        text: inView ? still : out,
        reason: `${String(minutes)} × 15′ is ${distance}′, ${inView ? 'less' : 'more'} than ${edge}′.`,
      },
      wrong: [
        {
          text: `In the middle, where you left it: ${inNumber(field)}′ of sky are too much to cross`,
          reason: `The sky does not wait. Without motors a star drifts 15′ every minute.`,
          misconception: 'sky-stands-still',
        },
        {
          text: inView
            ? `Out of view: ${inNumber(gone * 4)}′ from the middle, with the edge at ${edge}′`
            : `Still in view: ${inNumber(gone / 4, 1)}′ from the middle, with the edge at ${edge}′`,
          reason: inView
            ? `That is 1° a minute. The sky turns 15° in an hour, and so 15′ in a minute.`
            : `That is less than 4′ a minute. The sky turns 15° in an hour, and so 15′ in a minute.`,
        },
      ],
      afterwards: viewDrawing(
        `The star has drifted ${distance}′ to one side; the edge of the view is ${edge}′ from the middle.`,
        [{ right: Math.min(share, 1.4), up: 0, size: 0.03 }],
        [
          {
            kind: 'line',
            x1: 160,
            y1: 120,
            x2: 160 + 105 * Math.min(share, 1.4),
            y2: 120,
            stroke: 'sky-line',
            dashed: true,
          },
        ],
      ),
    });
  }
}

/** The sky turns, and a telescope without motors stands still. */
export const starAdrift: ItemFamily = {
  id: 'star-adrift',
  lesson: 'eyepieces-and-views',
  objective: 'drift',
  skill: 'field',
  title: 'How long a star stays in view',
  version: 1,
  templates: {
    'how-long': howLong,
    'field-from-time': fieldFromTime,
    'longest-stay': longestStay,
    'shortest-first': shortestFirst,
    'looked-away': lookedAway,
  },
};
