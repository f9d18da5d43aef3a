import { choice, numeric, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { pickOne, pickSome } from '../../variants/pick-one';
import { adaptedAfterMinutes, lamps, lightNeeded, rodsForCones } from '../../night/dark-adaptation';
import { drawAdaptation } from '../../drawings/draw-adaptation';

const half =
  'Eyes take about half an hour to get used to the dark, and one white light may cost most of it.';
const who = ['You', 'The class', 'Your partner', 'Two visitors'] as const;

const clockAfter = (hour: number, minute: number, later: number): string => {
  const at = hour * 60 + minute + later;
  return `${String(Math.floor(at / 60) % 24).padStart(2, '0')}:${String(at % 60).padStart(2, '0')}`;
};

function whenReady({ random }: ItemDraw) {
  const hour = random.integer(18, 22);
  const minute = 5 * random.integer(0, 11);
  const option = (later: number, reason: string) => ({
    text: clockAfter(hour, minute, later),
    reason,
  });
  return choice({
    prompt: `${pickOne(random, who)} left a brightly lit room at ${clockAfter(hour, minute, 0)} and stayed in the dark. From about when on do eyes see nearly all that they will?`,
    explanation: half,
    right: option(30, 'After half an hour the rods have gained nearly all that they can.'),
    wrong: [
      {
        ...option(
          2,
          'After two minutes you stop stumbling. Eyes then still need some thousand times the light that they will need later.',
        ),
        misconception: 'eyes-adapt-at-once' as const,
      },
      option(
        10,
        'After ten minutes the rods only begin to take over: still about a thousand times.',
      ),
      option(120, 'It does not take two hours: after half an hour hardly anything is gained.'),
    ],
  });
}

const spoilers = [
  {
    text: 'A look at a white phone screen',
    reason: 'Even a dimmed screen is white light close to the eye.',
  },
  { text: 'The headlights of a car', reason: 'White and strong: all eyes begin anew.' },
  { text: 'The flash of a camera', reason: 'Short, but very bright and white.' },
  {
    text: 'A white torch to find an eyepiece',
    reason: 'What it lights up is bright, and so is its beam.',
  },
  {
    text: 'The lamp over the school door',
    reason: 'White, and it goes on by itself: turn it off or go farther away.',
  },
  { text: 'A full Moon in the eyepiece', reason: 'It is a sunlit landscape. Look at it last.' },
];
const harmlessLights = [
  {
    text: 'A dim red lamp pointed at the ground',
    reason: 'The rods hardly see red, and it is dim.',
  },
  { text: 'The Milky Way', reason: 'Starlight is what the eyes got ready for.' },
  { text: 'A dim red lamp on the star chart', reason: 'The rods hardly see red, and it is dim.' },
  { text: 'The eyepiece on a faint cluster', reason: 'That is what the eyes got ready for.' },
  { text: 'A page in deep red on black, turned down', reason: 'Red, and as dim as it will go.' },
];

function whatSpoilsIt({ random }: ItemDraw) {
  return several({
    prompt: `${pickOne(random, who)} spent half an hour in the dark. Tick all that would undo it.`,
    explanation:
      'Dim and red does little, bright or white does much. The page’s after-dark colours help only when the screen is turned down.',
    right: pickSome(random, spoilers, random.integer(2, 3)),
    wrong: pickSome(random, harmlessLights, 2),
  });
}

/** Minutes after which the eye needs no more than so many times the light, found by halving. */
function minutesUntil(times: number): number {
  let [early, late] = [0, adaptedAfterMinutes];
  while (late - early > 0.001) {
    const middle = (early + late) / 2;
    if (lightNeeded(middle) > times) early = middle;
    else late = middle;
  }
  return late;
}

function readTheCurve({ random }: ItemDraw) {
  const times = pickOne(random, [1000, 100, 10]);
  const key = Math.round(minutesUntil(times) * 10) / 10;
  // On the way to a thousand the curve is flat: the reading is coarser there.
  const full = times === 1000 ? 3 : 1.5;
  return numeric({
    prompt: `The chart shows how many times as much light an eye needs as at its best. ${pickOne(random, who)} came out of a bright room. After how many minutes is it down to ${String(times)} times?`,
    drawing: drawAdaptation(
      [],
      `A chart of light needed over minutes in the dark. 100 000 times at the start, about 1000 times from 8 to 10 minutes. From 10 minutes on it falls in a straight line to 10 times at 18 minutes: each power of ten takes about 4 minutes. Then more slowly to once at 32 minutes.`,
    ),
    unit: 'minutes',
    key: times === 1000 ? 10 : key,
    tolerance: { mode: 'absolute', full, zero: 6 },
    explanation: `Go across from ${String(times)}× to the curve and down: about ${String(Math.round(times === 1000 ? 10 : key))} minutes.`,
    slips: [
      {
        gives: adaptedAfterMinutes,
        reason: 'That is how long it takes until nothing more is gained.',
      },
    ],
  });
}

function predictTheFlash({ random }: ItemDraw) {
  const flash = random.integer(20, 30);
  const later = random.integer(3, 9);
  const needs = lightNeeded(later) / lightNeeded(flash);
  const rounded = Number(needs.toPrecision(1));
  const text = (times: number) => `About ${String(times)} times as much`;
  return choice({
    prompt: `${pickOne(random, who)} spent ${String(flash)} minutes in the dark. Then a bright white torch shines into the eyes for some seconds. Predict how much light they may need ${String(later)} minutes later, compared with just before.`,
    explanation: `At worst it begins nearly anew: ${String(later)} minutes in the dark instead of ${String(flash + later)}.`,
    afterwards: drawAdaptation(
      [flash],
      `The curve falls for ${String(flash)} minutes, jumps back up at the white light, and begins to fall anew. ${String(later)} minutes later the eye needs about ${String(rounded)} times as much light as just before it.`,
    ),
    right: {
      text: text(rounded),
      reason:
        'A bright white light may cost the eyes most of what they gained, and the rods take ten minutes to come in.',
    },
    wrong: [
      {
        text: 'Less than before: more time has passed',
        reason: 'Time in the dark counts from the last white light.',
        misconception: 'eyes-adapt-at-once',
      },
      {
        text: 'The same as before: it was only seconds',
        reason: 'Seconds of a bright light may cost up to half an hour.',
        misconception: 'eyes-adapt-at-once',
      },
      {
        text: text(2),
        reason: 'That would be a dim red lamp. White light costs far more.',
      },
    ],
  });
}

function gentlestLamp({ random }: ItemDraw) {
  const chosen = pickSome(random, lamps, 4).sort((a, b) => rodsForCones(a) - rodsForCones(b));
  return order({
    prompt: `${pickOne(random, who)} may choose a lamp to read the chart by. All are made equally bright to read by. Put them in order: the one that leaves dark-adapted eyes most alone comes first.`,
    explanation:
      'The rods, which see in the dark, hardly see red and see blue-green and blue best. Dim it as far as you can, whatever its colour.',
    steps: chosen.map(({ name }) => `${name === 'amber' ? 'An' : 'A'} ${name} lamp`),
    rules: chosen.slice(1).map((lamp, i) => ({
      first: i,
      then: i + 1,
      reason: `the rods see ${lamp.name} light ${String(Number((rodsForCones(lamp) / rodsForCones(chosen[i] ?? lamp)).toPrecision(2)))} times as strongly.`,
    })),
  });
}

/** Eyes in the dark, and the lights that spoil them. */
export const eyesAndLamps: ItemFamily = {
  id: 'eyes-and-lamps',
  lesson: 'the-night',
  objective: 'eyes',
  skill: 'safety',
  title: 'Eyes in the dark, and lamps',
  version: 1,
  templates: {
    'when-ready': whenReady,
    'what-spoils-it': whatSpoilsIt,
    'read-the-curve': readTheCurve,
    'predict-the-flash': predictTheFlash,
    'gentlest-lamp': gentlestLamp,
  },
};
