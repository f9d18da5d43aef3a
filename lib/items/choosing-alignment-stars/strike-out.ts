import { airmass } from '../../sky/extinction';
import { discDrawing, onDisc, ringShape } from '../clock-and-place/sky-drawings';
import { whereabouts } from '../clock-and-place/words';
import { pickOne, pickSome } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';
import { choice, match, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import {
  apartDeg,
  clearOfLimits,
  drawEvening,
  lightInWords,
  magnitudeInWords,
  objection,
  whole,
  type DrawnEvening,
  type Light,
} from './drawn-evening';

/** Lights about which nobody who counts fists can be in two minds, and with nothing like them beside them. */
const plain = (evening: DrawnEvening): Light[] =>
  evening.lights.filter(
    (light) =>
      clearOfLimits(light) &&
      light.magnitude < 2.3 &&
      light.cautions.length === 0 &&
      // A reason that a learner cannot see from the question is none to ask for.
      light.reasons.every(({ code }) => code === 'too-low' || code === 'too-high'),
  );

const told = (light: Light): string =>
  `${lightInWords(light)}, ${magnitudeInWords(light.magnitude)}`;
const fits = ({ altitudeDeg }: Light): string =>
  `At ${whole(altitudeDeg)}° it stands well, it is bright, and it is a star.`;
const lower = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** An evening with so many plain lights that may serve and so many that may not. */
function eveningWith(draw: ItemDraw, serving: number, struck: number) {
  for (;;) {
    const evening = drawEvening(draw);
    const lights = plain(evening);
    const may = lights.filter(({ usable }) => usable);
    const mayNot = lights.filter(({ usable }) => !usable);
    if (may.length >= serving && mayNot.length >= struck) return { evening, may, mayNot };
  }
}

const questions = [
  'Which of these may serve as alignment stars?',
  'Which of these would you keep on your list of alignment stars?',
  'Strike out what would let you down. Which are left?',
];

function mayServe(draw: ItemDraw) {
  const { evening, may, mayNot } = eveningWith(draw, 2, 2);
  const right = pickSome(draw.random, may, draw.random.integer(2, Math.min(3, may.length)));
  const wrong = pickSome(draw.random, mayNot, 5 - right.length);
  return several({
    prompt: `${evening.when}, all of them in the clear. ${pickOne(draw.random, questions)}`,
    explanation: 'A star, bright, between two and seven fists up: 20° to 70°.',
    right: right.map((light) => ({ text: told(light), reason: fits(light) })),
    wrong: wrong.map((light) => ({
      text: told(light),
      reason: lower(objection(light)?.reason ?? ''),
      ...(light.kind === 'planet' ? { misconception: 'planet-taken-for-star' as const } : {}),
    })),
  });
}

function oneToStrikeOut(draw: ItemDraw) {
  const { evening, may, mayNot } = eveningWith(draw, 3, 1);
  const right = pickOne(draw.random, mayNot);
  return choice({
    prompt: `${evening.when}, all of them in the clear. Which one must be struck out?`,
    explanation: `${objection(right)?.reason ?? ''} The others are stars between 20° and 70° up.`,
    right: { text: told(right), reason: objection(right)?.reason ?? '' },
    wrong: pickSome(draw.random, may, 3).map((light) => ({
      text: told(light),
      reason: `It may stay. ${fits(light)}`,
    })),
  });
}

function whyNot(draw: ItemDraw) {
  for (;;) {
    const { evening, may, mayNot } = eveningWith(draw, 1, 2);
    const verdictOf = (light: Light) =>
      ({ planet: 'It is a planet', 'too-low': 'It is too low', 'too-high': 'It is too high' })[
        objection(light)?.code ?? ''
      ];
    const of = (verdict: string) =>
      draw.random.pick(mayNot.filter((light) => verdictOf(light) === verdict));
    const bad = ['It is a planet', 'It is too low', 'It is too high'].flatMap((verdict) => {
      const light = of(verdict);
      return light === undefined ? [] : [{ light, verdict }];
    });
    if (bad.length < 2) continue;
    const good = { light: pickOne(draw.random, may), verdict: 'It may serve' };
    const all = [...bad, good];
    return match({
      prompt: `${evening.when}. What do you say to ${draw.random
        .shuffle(all)
        .map(({ light }) => light.name)
        .join(', ')}?`,
      explanation: 'A star, bright, between two and seven fists up: 20° to 70°.',
      pairs: all.map(({ light, verdict }) => ({
        left: lightInWords(light),
        right: verdict,
        reason: lower(objection(light)?.reason ?? fits(light)),
      })),
      spare: ['It is too low', 'It is too high', 'It is a planet'],
    });
  }
}

function pointAtTheServing(draw: ItemDraw) {
  for (;;) {
    const { evening, may, mayNot } = eveningWith(draw, 1, 2);
    const right = pickOne(draw.random, may);
    const wrong: Light[] = [];
    for (const light of draw.random.shuffle(mayNot.filter(({ kind }) => kind === 'star'))) {
      const clear = [right, ...wrong].every(
        (one) => apartDeg(one, light) > 14 && whereabouts(one) !== whereabouts(light),
      );
      if (clear && wrong.length < 4) wrong.push(light);
    }
    if (wrong.length < 2) continue;
    const spot = (light: Light) => ({ ...onDisc(light), where: capitalised(whereabouts(light)) });
    return point({
      prompt: `${evening.when}. The ringed stars are bright and in the clear. The chart shows the whole sky, its dashed circles 30° and 60° up. Point at the one that may serve.`,
      drawing: discDrawing(draw.random.shuffle([right, ...wrong]).map(ringShape), {
        alternative: `A round chart of the sky, zenith in the middle and horizon as its rim. Ringed: ${draw.random
          .shuffle([right, ...wrong])
          .map(whereabouts)
          .join('; ')}.`,
      }),
      explanation: `${right.name} stands ${whereabouts(right)}, between two and seven fists. The others are lower or higher.`,
      right: { ...spot(right), reason: fits(right) },
      wrong: wrong.map((light) => ({
        ...spot(light),
        reason: `That is ${light.name}. ${objection(light)?.reason ?? ''}`,
      })),
    });
  }
}

function mostAirFirst(draw: ItemDraw) {
  for (;;) {
    const evening = drawEvening(draw);
    const chosen: Light[] = [];
    for (const light of draw.random.shuffle(evening.lights)) {
      const air = airmass(light.altitudeDeg);
      // A quarter more air is more than half a fist anywhere but overhead.
      const clear = chosen.every((one) => {
        const other = airmass(one.altitudeDeg);
        return (
          Math.max(air, other) > 1.25 * Math.min(air, other) &&
          whereabouts(one) !== whereabouts(light)
        );
      });
      if (clear && light.altitudeDeg > 7 && chosen.length < 4) chosen.push(light);
    }
    if (chosen.length < 4) continue;
    const sorted = chosen.sort((a, b) => a.altitudeDeg - b.altitudeDeg);
    const air = (light: Light) => airmass(light.altitudeDeg).toFixed(1);
    return order({
      prompt: `${evening.when}. Whose light comes through the most air? Put them in order, the most air first.`,
      explanation: `The lower, the more air: ${sorted.map((light) => `${light.name} ${air(light)} times the air at the zenith`).join(', ')}.`,
      steps: sorted.map(lightInWords),
      rules: sorted.slice(1).map((light, i) => ({
        first: i,
        then: i + 1,
        reason: `at ${whole(sorted[i]?.altitudeDeg ?? 0)}° it is ${air(sorted[i] ?? light)} times the air at the zenith, at ${whole(light.altitudeDeg)}° only ${air(light)} times.`,
      })),
    });
  }
}

export const strikeOut: ItemFamily = {
  id: 'strike-out',
  lesson: 'choosing-alignment-stars',
  objective: 'usable',
  skill: 'choose-stars',
  title: 'Which stars may serve',
  version: 2,
  templates: {
    'may-serve': mayServe,
    'one-to-strike-out': oneToStrikeOut,
    'why-not': whyNot,
    'point-at-the-serving': pointAtTheServing,
    'most-air-first': mostAirFirst,
  },
};
