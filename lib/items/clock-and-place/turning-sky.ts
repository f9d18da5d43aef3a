import { wrap180 } from '../../units/angle';
import { directionFromAzAlt, separationDeg } from '../../units/vector';
import { choice, numeric, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import type { MisconceptionId } from '../misconceptions';
import {
  drawSky,
  siderealDegPerHour,
  type DrawnSky,
  type Position,
  type SkyStar,
} from './drawn-sky';
import { aroundPole, type PoleSpot } from './pole-drawing';
import { journeyDrawing } from './sky-drawings';
import { clockTime, span, whereabouts } from './words';
import { pickOne, pickSome } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

const apartDeg = (one: Position, other: Position): number =>
  separationDeg(
    directionFromAzAlt(one.azimuthDeg, one.altitudeDeg),
    directionFromAzAlt(other.azimuthDeg, other.altitudeDeg),
  );

function turnOfTheSky({ random }: ItemDraw) {
  const minutes = 20 * random.integer(3, 18);
  const start = 10 * random.integer(108, 126);
  const hours = minutes / 60;
  const key = siderealDegPerHour * hours;
  return numeric({
    prompt: `By how many degrees does the sky turn from ${clockTime(start)} to ${clockTime(start + minutes)}?`,
    unit: 'degrees',
    key,
    tolerance: { mode: 'absolute', full: 1, zero: Math.max(6, key / 4) },
    explanation: `It turns 15° an hour, a fist and a half. In ${span(minutes)} that is ${String(Math.round(key))}°.`,
    slips: [
      {
        gives: Number(hours.toFixed(2)),
        misconception: 'hour-is-one-degree',
        reason: 'That is 1° an hour. A whole turn, 360°, takes about 24 hours: 15° an hour.',
      },
      {
        gives: 30 * hours,
        reason:
          'That is 30° an hour, as the hour hand of a clock goes: round in 12 hours. The sky takes 24.',
      },
    ],
  });
}

/** Stars that move far enough, stay up and do not come too close to the zenith. */
const movers = (sky: DrawnSky, hours: number): SkyStar[] =>
  sky.stars.filter((star) => {
    const way = [-hours, 0, hours / 2, hours].map((hour) => sky.at(star, hour));
    return (
      star.magnitude < 2 &&
      way.slice(1).every(({ altitudeDeg }) => altitudeDeg > 12 && altitudeDeg < 72) &&
      apartDeg(sky.at(star, 0), sky.at(star, hours)) > 18
    );
  });

type Guess = { at: Position; reason: string; misconception?: MisconceptionId };

function whereWillItBe({ random }: ItemDraw) {
  const hours = random.integer(2, 4);
  const { sky, star } = skyWithMover(random, hours);
  const [now, then] = [sky.at(star), sky.at(star, hours)];
  const back = sky.at(star, -hours);
  const guesses: Guess[] = [
    {
      at: now,
      reason: 'That is where it stands now. The sky turns all night, 15° an hour.',
      misconception: 'same-stars-all-night',
    },
    {
      at: back,
      reason: `That is where it was ${span(60 * hours)} ago. Stars go from east to west.`,
      misconception: 'sky-turns-the-other-way',
    },
    {
      at: {
        azimuthDeg: now.azimuthDeg,
        altitudeDeg: now.altitudeDeg + 2 * (now.altitudeDeg - then.altitudeDeg),
      },
      reason:
        'Straight up or down is not how stars go. Each goes round the pole on its own circle.',
    },
    {
      at: sky.at(star, 2 * hours),
      reason: `That is twice as far, where it stands ${span(120 * hours)} from now.`,
    },
  ];
  const words = (at: Position) => capitalised(`${whereabouts(at)}.`);
  const wrong = guesses.filter(
    ({ at }, i) =>
      at.altitudeDeg > -60 &&
      at.altitudeDeg < 80 &&
      [then, ...guesses.slice(0, i).map((one) => one.at)].every(
        (other) => words(other) !== words(at),
      ),
  );
  return choice({
    prompt: `${sky.where}, ${sky.when}. ${star.name} stands ${whereabouts(now)}. Where does it stand ${span(60 * hours)} later?`,
    explanation: `In ${span(60 * hours)} the sky turns by ${String(15 * hours)}° about the pole. ${star.name} goes from east to west, and stands ${whereabouts(then)}.`,
    right: {
      text: words(then),
      reason: `${String(15 * hours)}° on, on its circle round the pole.`,
    },
    wrong: wrong.map(({ at, ...why }) => ({ ...why, text: words(at) })),
    afterwards: journeyDrawing((share) => sky.at(star, share * hours), {
      name: star.name,
      alternative: `The whole sky. ${star.name} has gone from its old place (${whereabouts(now)}) to its new one (${whereabouts(then)}).`,
    }),
  });
}

function skyWithMover(random: ItemDraw['random'], hours: number): { sky: DrawnSky; star: SkyStar } {
  for (;;) {
    const sky = drawSky(random, { hours });
    const found = movers(sky, hours);
    if (found.length > 0) return { sky, star: pickOne(random, found) };
  }
}

/** Up or down beyond doubt. */
const clearOfHorizonDeg = 4;

function goneByThen({ random }: ItemDraw) {
  for (;;) {
    const hours = random.integer(3, 6);
    const sky = drawSky(random, { hours });
    const up = sky.stars.filter((star) => star.magnitude < 1.9 && sky.at(star).altitudeDeg > 8);
    const later = (star: SkyStar) => sky.at(star, hours).altitudeDeg;
    const gone = pickSome(
      random,
      up.filter((star) => later(star) < -clearOfHorizonDeg),
      2,
    );
    const still = pickSome(
      random,
      up.filter((star) => later(star) > clearOfHorizonDeg),
      5 - gone.length,
    );
    if (gone.length === 0 || gone.length + still.length < 4) continue;
    const now = (star: SkyStar) => `${star.name}, ${whereabouts(sky.at(star))}`;
    return several({
      prompt: `${sky.where}, ${sky.when}. These stars are up. Which of them have set ${span(60 * hours)} later?`,
      explanation: `The sky turns by ${String(15 * hours)}°. What stands low in the west goes down; what stands in the east, or circles close to the pole, does not.`,
      right: gone.map((star) => ({
        text: now(star),
        reason: `${star.name} sinks in the west, and is ${String(Math.round(-later(star)))}° below the horizon by then.`,
      })),
      wrong: still.map((star) => ({
        text: now(star),
        reason: `it still stands ${whereabouts(sky.at(star, hours))}.`,
      })),
    });
  }
}

/** So far apart that nobody who reckons rightly can doubt the order, degrees of turn. */
const clearTurnDeg = 15;

function firstOnTheMeridian({ random }: ItemDraw) {
  for (;;) {
    const sky = drawSky(random);
    const equatorSide = sky.latitudeDeg > 0 ? 'south' : 'north';
    const chosen: SkyStar[] = [];
    for (const star of random.shuffle(sky.stars)) {
      const { altitudeDeg } = sky.at(star);
      const onItsSide =
        Math.abs(star.declinationDeg) < 25 && star.hourAngleDeg < -8 && altitudeDeg > 8;
      const clear = chosen.every(
        (one) => Math.abs(one.hourAngleDeg - star.hourAngleDeg) > clearTurnDeg,
      );
      if (onItsSide && clear && chosen.length < 4) chosen.push(star);
    }
    if (chosen.length < 3) continue;
    const sorted = [...chosen].sort((a, b) => b.hourAngleDeg - a.hourAngleDeg);
    // What is nearer to the meridian must also look so, whatever each one's declination.
    const offDeg = sorted.map((star) => {
      const { azimuthDeg } = sky.at(star);
      return Math.abs(wrap180(azimuthDeg - (sky.latitudeDeg > 0 ? 180 : 0)));
    });
    if (offDeg.some((off, i) => i > 0 && off < (offDeg[i - 1] ?? 0) + 5)) continue;
    const minutesTo = (star: SkyStar) => Math.round((-60 * star.hourAngleDeg) / siderealDegPerHour);
    return order({
      prompt: `${sky.where}, ${sky.when}. These stars are on their way up. Put them in the order in which they cross the meridian, due ${equatorSide}.`,
      explanation: `The nearer a star is to the meridian, the sooner it crosses: the sky turns 15° an hour. ${sorted.map((star) => `${star.name} in ${span(minutesTo(star))}`).join(', ')}.`,
      steps: sorted.map((star) => `${star.name}, ${whereabouts(sky.at(star))}`),
      rules: sorted.slice(1).map((star, i) => ({
        first: i,
        then: i + 1,
        reason: `it has only ${String(Math.round(-(sorted[i]?.hourAngleDeg ?? 0)))}° left to turn, the other ${String(Math.round(-star.hourAngleDeg))}°.`,
      })),
    });
  }
}

function roundThePole({ random }: ItemDraw) {
  const north = random.integer(0, 3) > 0;
  const hours = pickOne(random, [3, 6]);
  const step = random.integer(0, 7);
  // Seen from inside, the north goes against the clock and the south with it.
  const way = (north ? 1 : -1) * (hours / 3);
  const spots: PoleSpot[] = [
    {
      step: step + way,
      reason: `${String(15 * hours)}° ${north ? 'against the clock' : 'with the clock'}.`,
    },
    {
      step: step - way,
      reason: `That is the other way round. About the ${north ? 'north' : 'south'} pole stars go ${north ? 'against the clock' : 'with the clock'}.`,
      misconception: 'sky-turns-the-other-way',
    },
    {
      step,
      reason: 'That is where it is now. Stars near the pole do not set, but they do go round.',
      misconception: 'same-stars-all-night',
    },
    {
      step: step + 2 * way,
      reason: `That takes ${String(2 * hours)} hours: a whole turn takes 24.`,
    },
  ];
  const fists = random.integer(2, 3);
  const clock = 60 * random.integer(18, 21);
  const drawing = aroundPole({ north, now: step, spots, fists });
  const [right, ...wrong] = drawing.spots;
  if (right === undefined) throw new Error('there is always a right spot');
  return point({
    prompt: `You look ${north ? 'north' : 'south'} at ${clockTime(clock)}. A star stands at the large dot, ${String(fists)} fists from the pole. Point at its place at ${clockTime(clock + 60 * hours)}.`,
    drawing: drawing.drawing,
    explanation: `In ${String(hours)} hours the sky turns ${String(15 * hours)}°. Round the ${north ? 'north pole it goes against' : 'south pole it goes with'} the clock.`,
    right,
    wrong,
  });
}

export const turningSky: ItemFamily = {
  id: 'turning-sky',
  lesson: 'clock-and-place',
  objective: 'turning',
  skill: 'clock-and-place',
  title: 'Where a star will be',
  version: 1,
  templates: {
    'turn-of-the-sky': turnOfTheSky,
    'where-will-it-be': whereWillItBe,
    'gone-by-then': goneByThen,
    'first-on-the-meridian': firstOnTheMeridian,
    'round-the-pole': roundThePole,
  },
};
