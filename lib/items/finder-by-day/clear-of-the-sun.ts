import { leastSunDistanceDeg, nearestToSunDeg } from '../../finder/way-past-sun';
import { choice, numeric, several } from '../build-item';
import { inNumber } from '../eyepieces-and-views/words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';
import type { ItemDraw, ItemFamily } from '../item-family';
import {
  besideSun,
  drawFar,
  drawSun,
  farThings,
  fromSunDeg,
  inFists,
  isPlain,
  metres,
  stripDrawing,
} from './day-scene';

/** Answers nearer to each other than this could not be told apart by fists; degrees. */
const plainlyOtherDeg = 4;

const level = (azimuthDeg: number) => ({ azimuthDeg, altitudeDeg: 0 });

function howFar({ random }: ItemDraw) {
  const sun = drawSun(random);
  const gap = 10 * random.integer(2, 8) * (random.integer(0, 1) === 0 ? 1 : -1);
  const { name } = drawFar(random);
  const key = fromSunDeg(level(sun.azimuthDeg + gap), sun);
  return numeric({
    prompt: `The Sun stands at azimuth ${String(sun.azimuthDeg)}°, ${String(sun.altitudeDeg)}° up. A ${name} stands on the level horizon at azimuth ${String(sun.azimuthDeg + gap)}°. How far apart are they on the sky? An estimate to 5° will do.`,
    unit: 'degrees',
    key,
    tolerance: { mode: 'absolute', full: 6, zero: 18 },
    explanation: `Along the horizon ${String(Math.abs(gap))}°, and ${String(sun.altitudeDeg)}° up. Straight across it is ${inNumber(key)}°: a little more than the longer of the two, never their sum.`,
    slips: [
      {
        gives: Math.abs(gap) + sun.altitudeDeg,
        reason: 'That adds the two. The straight way is shorter than one along and one up.',
      },
    ].filter(({ gives }) => Math.abs(gives - key) > 6.5),
  });
}

function whichTarget({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const sunFists = pickOne(random, [1, 1.5]);
  const sun = { azimuthDeg: 180, altitudeDeg: 10 * sunFists };
  const near = random.shuffle([-2, -1.5, -1, 1, 1.5, 2]).slice(0, 3);
  const clear = pickOne(random, [-8, -7, -6, -5, -4, 4, 5, 6, 7, 8]);
  const names = random.shuffle(farThings);
  const [right, ...wrong] = [clear, ...near].map((fists, i) => {
    const apartDeg = fromSunDeg(level(180 + 10 * fists), sun);
    const enough = apartDeg > nearestToSunDeg ? 'more' : 'less';
    return {
      text: `The ${names[i] ?? 'mast'}, ${metres(drawFar(random).distanceM)} away, ${besideSun(fists)}`,
      reason: `It is ${inNumber(apartDeg)}° from the Sun: ${enough} than the ${String(nearestToSunDeg)}° that must lie between.`,
    };
  });
  if (right === undefined) throw new RangeError('one of them is clear');
  return choice({
    prompt: `The Sun stands ${inFists(sunFists)} up. These four stand on the level horizon, well seen. Which of them may ${kit.name}’s finder be set on at ${String(random.integer(1, 4))} o’clock? It stands in the shadow of a building with an adult beside it.`,
    explanation: `Three fists, ${String(nearestToSunDeg)}°, are the least, straight across the sky. However far away a thing is, near the Sun it will not do.`,
    right,
    wrong,
  });
}

/** What a hasty look may take for the nearest point of a level way; degrees. */
function hastyAngles(from: number, to: number, endsDeg: readonly number[], sunUpDeg: number) {
  const nearerEnd = {
    deg: Math.min(...endsDeg),
    reason: 'That is the nearer of the two ends. In between, the way comes nearer.',
  };
  const fartherEnd = {
    deg: Math.max(...endsDeg),
    reason: 'That is the end farther from the Sun. What counts is the nearest point of the way.',
  };
  const onTheSun = {
    deg: 0,
    reason: `The way runs along the horizon, and the Sun stands ${String(sunUpDeg)}° above it.`,
  };
  const below = {
    deg: sunUpDeg,
    reason: 'That is how high the Sun stands. This way does not lead below it.',
  };
  const alongOnly = {
    deg: 10 * Math.min(Math.abs(from), Math.abs(to)),
    reason: 'That is counted along the horizon only. The height of the Sun counts as well.',
  };
  const leadsBelow = from * to <= 0;
  return leadsBelow ? [nearerEnd, onTheSun, fartherEnd] : [below, fartherEnd, alongOnly];
}

/** Only the angle is asked: what to do is the same on every way, cap, turn, open. */
function whichWay({ random, world }: ItemDraw) {
  for (;;) {
    const kit = pickOne(random, world.kits);
    const sun = { ...drawSun(random), altitudeDeg: random.integer(6, 44) };
    const [fromFists, toFists] = [random.integer(-8, 8), random.integer(-8, 8)];
    const from = level(sun.azimuthDeg + 10 * fromFists);
    const to = level(sun.azimuthDeg + 10 * toFists);
    const ends = [fromSunDeg(from, sun), fromSunDeg(to, sun)];
    if (Math.abs(fromFists - toFists) < 3 || fromFists * toFists === 0) continue;
    if (!ends.every((deg) => deg > nearestToSunDeg && isPlain(deg))) continue;
    const least = leastSunDistanceDeg(from, to, sun);
    if (!isPlain(least)) continue;
    const told: number[] = [least];
    const wrong = hastyAngles(fromFists, toFists, ends, sun.altitudeDeg).filter(({ deg }) => {
      const apart = told.every((other) => Math.abs(other - deg) >= plainlyOtherDeg);
      if (apart) told.push(deg);
      return apart;
    });
    if (wrong.length < 2) continue;
    const nearest = inNumber(least);
    const { name } = drawFar(random);
    return choice({
      prompt: `${kit.name} stands capped beside your teacher in the shadow of the school, level, ${besideSun(fromFists)}. The Sun is ${String(sun.altitudeDeg)}° up. You turn it, capped, to the ${name}, ${besideSun(toFists)}, by the short way along the horizon. How near to the Sun does the way lead?`,
      explanation:
        least < nearestToSunDeg
          ? `Both ends are clear, but the way between is not: it leads ${nearest}° past the Sun, less than the ${String(nearestToSunDeg)}° that must lie between. So the order is always: cap, turn, open.`
          : `All of this way is more than ${String(nearestToSunDeg)}° from the Sun. The caps go on even so, since a hand can slip. The order is always: cap, turn, open.`,
      right: { text: `${nearest}°`, reason: 'That is the nearest point of the whole way.' },
      wrong: wrong.map(({ deg, reason }) => ({ text: `${inNumber(deg)}°`, reason })),
    });
  }
}

function onTheStrip({ random, world }: ItemDraw) {
  for (;;) {
    const kit = pickOne(random, world.kits);
    const sunUp = random.integer(1, 4);
    const sun = { azimuthDeg: 180, altitudeDeg: 10 * sunUp };
    const places = random.shuffle([-6, -5, -4, -3, -2, -1, 1, 2, 3, 4, 5, 6]).slice(0, 4);
    const things = places
      .sort((a, b) => a - b)
      .map((fists, i) => ({
        fists,
        letter: 'ABCD'.charAt(i),
        apart: fromSunDeg(level(180 + 10 * fists), sun),
      }));
    const clear = things.filter(({ apart }) => apart > nearestToSunDeg);
    if (!things.every(({ apart }) => isPlain(apart))) continue;
    if (clear.length === 0 || clear.length === 4) continue;
    const written = ({ letter, apart, fists }: (typeof things)[number]) => ({
      text: `${letter}, ${besideSun(fists)}`,
      reason: `It is ${inNumber(apart)}° from the Sun.`,
    });
    return several({
      prompt: `${capitalised(pickOne(random, ['masts', 'chimneys', 'spires', 'towers']))} on the horizon, and the Sun. Which of them stand far enough from the Sun to set ${kit.name}’s finder on?`,
      drawing: stripDrawing(
        `The horizon with a mark every fist. The Sun stands ${String(sunUp)} ${sunUp === 1 ? 'fist' : 'fists'} above it. ${things.map(({ letter, fists }) => `${letter} stands ${besideSun(fists)}`).join('; ')}.`,
        sunUp,
        things,
      ),
      explanation: `Three fists from the Sun, straight across, are the least. The Sun’s own height counts too: ${things.map(({ letter, apart }) => `${letter} ${inNumber(apart)}°`).join(', ')}.`,
      right: clear.map(written),
      wrong: things.filter((one) => !clear.includes(one)).map(written),
    });
  }
}

/** Thirty degrees, three fists, for the tube, its finder and their way. */
export const clearOfTheSun: ItemFamily = {
  id: 'clear-of-the-sun',
  lesson: 'finder-by-day',
  objective: 'clear-way',
  skill: 'safety',
  title: 'Three fists clear of the Sun',
  version: 1,
  templates: {
    'how-far': howFar,
    'which-target': whichTarget,
    'which-way': whichWay,
    'on-the-strip': onTheStrip,
  },
};
