import { leastSunDistanceDeg, nearestToSunDeg } from '../../finder/way-past-sun';
import { choice, numeric, several } from '../build-item';
import { inNumber, oneOf, startingCapital } from '../eyepieces-and-views/words';
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
  const kit = oneOf(random, world.kits);
  const sunFists = oneOf(random, [1, 1.5]);
  const sun = { azimuthDeg: 180, altitudeDeg: 10 * sunFists };
  const near = random.shuffle([-2, -1.5, -1, 1, 1.5, 2]).slice(0, 3);
  const clear = oneOf(random, [-8, -7, -6, -5, -4, 4, 5, 6, 7, 8]);
  const names = random.shuffle(farThings);
  const [right, ...wrong] = [clear, ...near].map((fists, i) => {
    const apart = inNumber(fromSunDeg(level(180 + 10 * fists), sun));
    return {
      text: `The ${names[i] ?? 'mast'}, ${metres(drawFar(random).distanceM)} away, ${besideSun(fists)}`,
      reason: `It is ${apart}° from the Sun, and ${String(nearestToSunDeg)}° are the least.`,
    };
  });
  if (right === undefined) throw new RangeError('one of them is clear');
  return choice({
    prompt: `The Sun stands ${inFists(sunFists)} up. These four stand on the level horizon, well seen. Which of them may ${kit.name}’s finder be set on at ${String(random.integer(1, 4))} o’clock, with an adult beside it?`,
    explanation: `Three fists, ${String(nearestToSunDeg)}°, are the least, straight across the sky. However far away a thing is, near the Sun it will not do.`,
    right,
    wrong,
  });
}

function whichWay({ random, world }: ItemDraw) {
  for (;;) {
    const kit = oneOf(random, world.kits);
    const sun = drawSun(random);
    const [fromFists, toFists] = [random.integer(-9, 9), random.integer(-9, 9)];
    const from = level(sun.azimuthDeg + 10 * fromFists);
    const to = level(sun.azimuthDeg + 10 * toFists);
    const ends = [fromSunDeg(from, sun), fromSunDeg(to, sun)];
    if (Math.abs(fromFists - toFists) < 3) continue;
    if (!ends.every((deg) => deg > nearestToSunDeg && isPlain(deg))) continue;
    const least = leastSunDistanceDeg(from, to, sun);
    if (!isPlain(least)) continue;
    const past = least < nearestToSunDeg;
    const nearest = inNumber(least);
    const { name } = drawFar(random);
    const capIt = `Cap both, turn it, open again: the way passes ${nearest}° from the Sun`;
    const straight = `It may be turned open: the way stays ${nearest}° or more from the Sun`;
    const capped = `Cap both, turn it, open again: the way leads ${inNumber(least / 2)}° past the Sun`;
    return choice({
      prompt: `${kit.name} stands open beside your teacher in the shadow of the school, level, ${besideSun(fromFists)}. The Sun is ${String(sun.altitudeDeg)}° up. You want the ${name}, ${besideSun(toFists)}, by the short way along the horizon. What is true?`,
      explanation: `Not the ends alone count, but the whole way: it comes within ${nearest}° of the Sun, and ${String(nearestToSunDeg)}° are the least. Capped, the way is always safe.`,
      right: past
        ? { text: capIt, reason: `Both ends are clear, but the way between is not.` }
        : {
            text: straight,
            reason: `Nowhere on it is the Sun nearer than ${nearest}°. Capping it first would be safe too.`,
          },
      wrong: [
        past
          ? {
              text: `It may be turned open: both ends are ${inNumber(Math.min(...ends))}° or more from the Sun`,
              reason: `The ends are, but on the way it passes the Sun at ${nearest}°.`,
            }
          : {
              text: capped,
              reason: `Capping is never wrong, but that number is: it stays ${nearest}° away.`,
            },
        {
          text: past
            ? `It may be turned open if you are quick: it passes ${nearest}° from the Sun for a moment`
            : `It may be turned past the Sun too, if you are quick: that is only for a moment`,
          reason: 'A moment is enough. Sunlight that is gathered burns at once.',
          misconception: 'sun-harmless',
        },
      ],
    });
  }
}

function onTheStrip({ random, world }: ItemDraw) {
  for (;;) {
    const kit = oneOf(random, world.kits);
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
      prompt: `${startingCapital(oneOf(random, ['masts', 'chimneys', 'spires', 'towers']))} on the horizon, and the Sun. Which of them stand far enough from the Sun to set ${kit.name}’s finder on?`,
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
