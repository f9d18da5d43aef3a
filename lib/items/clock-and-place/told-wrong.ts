import { seenAt, tubeSentTo, type BelievedSky } from '../../clock/believed-place';
import { wrap180 } from '../../units/angle';
import { azAltFromDirection, directionFromAzAlt, separationDeg } from '../../units/vector';
import { choice, match, numeric, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import {
  drawSky,
  siderealDegPerHour,
  type DrawnSky,
  type Position,
  type SkyStar,
} from './drawn-sky';
import { afterTwoStars, goneAfterTwoStars, leftAfterTwoStars } from './after-two-stars';
import { discDrawing, onDisc, pathShape, ringShape, starShape } from './sky-drawings';
import { drawError, type ToldError } from './told-errors';
import { span, whereabouts } from './words';
import { pickOne, pickSome } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

function howFarTurned({ random }: ItemDraw) {
  const error = drawError(random);
  const { turnDeg, slips } = error;
  const full = Math.max(0.3, turnDeg / 40);
  return numeric({
    prompt: `${error.told} By how many degrees is the mount’s sky turned?`,
    unit: 'degrees',
    key: turnDeg,
    tolerance: { mode: 'absolute', full, zero: Math.max(2, turnDeg / 2) },
    explanation: error.why,
    slips: slips.filter(({ gives }) => Math.abs(gives - turnDeg) > 1.5 * full),
  });
}

/** Where a level mount that believes in a turned sky looks, and where the usual slips have it look. */
function tubeLooks(sky: DrawnSky, star: SkyStar, turnDeg: number): Position {
  const believed: BelievedSky = { turnDeg, latitudeDeg: sky.latitudeDeg, startDeg: 0 };
  const numbers = { latitudeDeg: sky.latitudeDeg, refractionScale: 1 };
  return azAltFromDirection(tubeSentTo(star, believed, numbers));
}

const apartDeg = (one: Position, other: Position): number =>
  separationDeg(
    directionFromAzAlt(one.azimuthDeg, one.altitudeDeg),
    directionFromAzAlt(other.azimuthDeg, other.altitudeDeg),
  );

function whereTheTubeLooks({ random }: ItemDraw) {
  for (;;) {
    const sky = drawSky(random);
    const ahead = random.integer(0, 1) === 1;
    const hours = pickOne(random, [1.5, 2, 3]);
    const turnDeg = (ahead ? 1 : -1) * siderealDegPerHour * hours;
    const star = random.pick(
      sky.stars.filter((one) => one.magnitude < 2 && Math.abs(one.declinationDeg) < 50),
    );
    if (star === undefined) continue;
    const now = sky.at(star);
    const right = tubeLooks(sky, star, turnDeg);
    const wrong = [
      {
        at: tubeLooks(sky, star, -turnDeg),
        reason: `That is the other way. A clock that is ${ahead ? 'ahead has the sky turned on, the way of the stars' : 'behind has the sky turned back'}.`,
        misconception: 'clock-behind-for-ahead' as const,
      },
      {
        at: now,
        reason:
          'That is where the star is. The mount looks where it would be at the time that it was told.',
      },
      {
        at: {
          azimuthDeg: now.azimuthDeg,
          altitudeDeg: now.altitudeDeg + (now.altitudeDeg > 45 ? -25 : 25),
        },
        reason:
          'Straight up or down would be a wrong altitude. A wrong clock turns the sky about the pole.',
      },
    ];
    const all = [right, ...wrong.map(({ at }) => at)];
    const shown = all.every(({ altitudeDeg }) => altitudeDeg > 8 && altitudeDeg < 78);
    const clear = all.every((one, i) =>
      all
        .slice(0, i)
        .every((other) => apartDeg(one, other) > 14 && whereabouts(one) !== whereabouts(other)),
    );
    if (!shown || !clear) continue;
    const spot = (at: Position) => ({ ...onDisc(at), where: capitalised(whereabouts(at)) });
    const told = `the mount’s clock is ${span(60 * hours)} ${ahead ? 'ahead' : 'behind'}`;
    return point({
      prompt: `${sky.where}, ${sky.when}: ${told}, and it has not been aligned yet. ${star.name} stands ${whereabouts(now)}. Sent to it, where does the tube look?`,
      drawing: discDrawing(all.map(ringShape), {
        alternative: `The whole sky, north at the top and east on the left. Four places are ringed: ${random.shuffle(all).map(whereabouts).join('; ')}.`,
      }),
      explanation: `A clock that is ${ahead ? 'ahead' : 'behind'} has the whole sky turned ${ahead ? 'on, the way of the stars' : 'back, against the way of the stars'}, by 15° an hour. The tube looks ${whereabouts(right)}, ${String(Math.round(apartDeg(now, right)))}° from the star.`,
      right: {
        ...spot(right),
        reason: `There the star stands ${span(60 * hours)} ${ahead ? 'later' : 'earlier'}.`,
      },
      wrong: wrong.map(({ at, ...why }) => ({ ...spot(at), ...why })),
      afterwards: discDrawing(
        [
          pathShape(Array.from({ length: 9 }, (_, i) => tubeLooks(sky, star, (turnDeg * i) / 8))),
          ringShape(right),
          starShape(now, true),
        ],
        {
          alternative: `The whole sky with ${star.name} as a dot and a ring where the tube looks, ${whereabouts(right)}.`,
          names: [{ at: now, name: star.name }],
        },
      ),
    });
  }
}

function fromLeastToMost({ random }: ItemDraw) {
  const chosen: ToldError[] = [];
  for (let tries = 0; chosen.length < 4 && tries < 60; tries++) {
    const error = drawError(random);
    // Twice as much is clear to anyone who has the right rule, and to nobody who guesses.
    if (
      chosen.every(
        ({ turnDeg }) => Math.max(turnDeg, error.turnDeg) > 1.6 * Math.min(turnDeg, error.turnDeg),
      )
    ) {
      chosen.push(error);
    }
  }
  const sorted = chosen.sort((a, b) => a.turnDeg - b.turnDeg);
  const size = ({ turnDeg }: ToldError) => `${String(Math.round(10 * turnDeg) / 10)}°`;
  return order({
    prompt: `Put these errors in order by how far each turns the mount’s sky, the least first: ${random
      .shuffle(sorted)
      .map(({ short }) => short)
      .join('; ')}.`,
    explanation: `An hour is 15°, a day is 1°, and a degree of longitude is 1°. Here: ${sorted.map(size).join(', ')}.`,
    steps: sorted.map(({ short }) => capitalised(short)),
    rules: sorted.slice(1).map((error, i) => {
      const before = sorted[i] ?? error;
      return {
        first: i,
        then: i + 1,
        reason: `it turns the sky by ${size(before)}, the other by ${size(error)}.`,
      };
    }),
  });
}

function worthAsMuch({ random }: ItemDraw) {
  const minutes = pickSome(random, [4, 8, 12, 20, 28, 40, 60, 80, 120], 6);
  const longitude = (one: number) => `${String(one / 4)}° of longitude`;
  const way = pickOne(random, ['ahead', 'behind']);
  const asked = minutes.slice(0, 4);
  return match({
    prompt: `The clock is ${way} by ${asked.map((one) => String(one)).join(', ')} minutes. Which error of longitude turns the mount’s sky by as much?`,
    explanation: '15° of longitude are worth an hour, and so 1° is worth four minutes.',
    pairs: asked.map((one) => ({
      left: `${String(one)} minutes ${way}`,
      right: longitude(one),
      reason: `${String(one)} minutes ÷ 4 is ${String(one / 4)}°.`,
    })),
    spare: minutes.slice(4).map(longitude),
  });
}

function putRightByTwoStars({ random }: ItemDraw) {
  const gone = pickSome(random, goneAfterTwoStars, 2);
  const left = pickSome(random, leftAfterTwoStars, 3);
  return several({
    prompt: `${capitalised(pickOne(random, afterTwoStars))} Which of these no longer spoil the way to a star?`,
    explanation:
      'Two stars turn the mount’s whole sky until it fits: whatever only turned or tipped it is put right. What moves among the stars, and what happens afterwards, is not.',
    right: gone,
    wrong: left,
  });
}

function whichSlipWasIt({ random }: ItemDraw) {
  for (;;) {
    const candidates = Array.from({ length: 12 }, () => drawError(random));
    const chosen = candidates.filter(
      ({ turnDeg, short }, i) =>
        candidates.findIndex((one) => one.short === short) === i &&
        candidates.slice(0, i).every((one) => Math.abs(one.turnDeg - turnDeg) > 1.5),
    );
    const [right, ...others] = chosen;
    if (right === undefined || others.length < 3) continue;
    const sky = drawSky(random);
    const star = random.pick(
      sky.stars.filter((one) => Math.abs(one.declinationDeg) < 12 && sky.at(one).altitudeDeg > 25),
    );
    if (star === undefined) continue;
    const missed = Math.round(separationDeg(...bothPlaces(sky, star, right.turnDeg)));
    return choice({
      prompt: `${sky.where}, ${sky.when}, the first slew: sent to ${star.name}, the tube looks about ${String(missed)}° away from it, on the very circle along which it goes round the pole. ${star.name} is close to the sky’s equator, where a turn shows whole. Which slip fits?`,
      explanation: right.why,
      right: { text: capitalised(right.short), reason: right.why },
      wrong: others.slice(0, 3).map((one) => ({
        text: capitalised(one.short),
        reason: `That turns the sky by ${String(Math.round(10 * one.turnDeg) / 10)}°, not by ${String(missed)}°.`,
      })),
    });
  }
}

function bothPlaces(sky: DrawnSky, star: SkyStar, turnDeg: number) {
  const seen = seenAt(star, { latitudeDeg: sky.latitudeDeg, refractionScale: 1 });
  const { azimuthDeg, altitudeDeg } = tubeLooks(sky, star, wrap180(turnDeg));
  return [seen, directionFromAzAlt(azimuthDeg, altitudeDeg)] as const;
}

export const toldWrong: ItemFamily = {
  id: 'told-a-wrong-time-or-place',
  lesson: 'clock-and-place',
  objective: 'wrong',
  skill: 'clock-and-place',
  title: 'How far off with a wrong clock or place',
  version: 1,
  templates: {
    'how-far-turned': howFarTurned,
    'where-the-tube-looks': whereTheTubeLooks,
    'from-least-to-most': fromLeastToMost,
    'worth-as-much': worthAsMuch,
    'put-right-by-two-stars': putRightByTwoStars,
    'which-slip-was-it': whichSlipWasIt,
  },
};
