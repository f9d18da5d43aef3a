import { discDrawing, onDisc, ringShape, starShape } from '../clock-and-place/sky-drawings';
import { whereabouts } from '../clock-and-place/words';
import { pickOne, pickSome } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';
import { choice, match, numeric, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { apartDeg, objection, whole, type Light } from './drawn-evening';
import {
  eveningWithPairs,
  isInLine,
  isTooClose,
  names,
  pairInWords,
  pairOf,
  servingStars,
  verdictOn,
  type DrawnPair,
} from './drawn-pairs';

const asks = [
  'Which pair would you take?',
  'Which two do you align on?',
  'Which two put the most targets into the eyepiece?',
];

/** Pairs that share no two stars with each other. */
const distinct = (pairs: readonly DrawnPair[]): DrawnPair[] =>
  pairs.filter((pair, i) => pairs.findIndex((one) => names(one) === names(pair)) === i);

function whichTwo(draw: ItemDraw) {
  for (;;) {
    const { evening, good, close, inLine } = eveningWithPairs(draw);
    const right = pickOne(draw.random, good);
    const struck = draw.random.pick(
      evening.lights.filter(
        (light) => objection(light) !== null && light.altitudeDeg > 8 && light.magnitude < 1.6,
      ),
    );
    const partner = draw.random.pick(servingStars(evening));
    if (struck === undefined || partner === undefined) continue;
    const why = objection(struck);
    const wrong = distinct([pickOne(draw.random, close), pickOne(draw.random, inLine)]);
    return choice({
      prompt: `${evening.when}, with ${evening.kit.name}. ${pickOne(draw.random, asks)}`,
      explanation: `Six to twelve fists apart, in different directions, both between two and seven fists up: ${names(right)}. ${verdictOn(right, evening.kit.name).reason}`,
      right: { text: pairInWords(right), reason: verdictOn(right, evening.kit.name).reason },
      wrong: [
        ...wrong.map((pair) => ({ text: pairInWords(pair), ...verdictOn(pair, evening.kit.name) })),
        {
          text: pairInWords(pairOf(evening, struck, partner)),
          reason: `${struck.name} may not serve. ${why?.reason ?? ''}`,
          ...(struck.kind === 'planet' ? { misconception: 'planet-taken-for-star' as const } : {}),
        },
      ],
    });
  }
}

/** How much better a partner must be than the next, in targets of 100: nobody then argues about it. */
const clearlyBetter = 25;

function pointAtThePartner(draw: ItemDraw) {
  for (;;) {
    const { evening, good } = eveningWithPairs(draw);
    const [first, right] = draw.random.shuffle([...pickOne(draw.random, good).lights]);
    if (first === undefined || right === undefined) continue;
    const best = pairOf(evening, first, right);
    const wrong: DrawnPair[] = [];
    for (const light of draw.random.shuffle(servingStars(evening))) {
      if (light === first || light === right) continue;
      const pair = pairOf(evening, first, light);
      const named = isTooClose(pair) || isInLine(pair);
      const clear = [right, first, ...wrong.map(({ lights }) => lights[1])].every(
        (one) => apartDeg(one, light) > 8 && whereabouts(one) !== whereabouts(light),
      );
      if (named && clear && pair.hits < best.hits - clearlyBetter && wrong.length < 4)
        wrong.push(pair);
    }
    if (wrong.length < 2) continue;
    const partners = [right, ...wrong.map(({ lights }) => lights[1])];
    const spot = (light: Light) => ({ ...onDisc(light), where: capitalised(whereabouts(light)) });
    return point({
      prompt: `${evening.when}, with ${evening.kit.name}. Your first star is ${first.name}, ${whereabouts(first)}. The ringed stars may all serve. Point at the best partner. East is on the left.`,
      drawing: discDrawing(
        [starShape(first, true), ...draw.random.shuffle(partners).map(ringShape)],
        {
          names: [{ at: first, name: first.name }],
          alternative: `A round chart of the sky, north at the top and east on the left. ${first.name} stands ${whereabouts(first)}. Ringed: ${draw.random.shuffle(partners).map(whereabouts).join('; ')}.`,
        },
      ),
      explanation: `${right.name} is far from ${first.name} and in another direction. ${verdictOn(best, evening.kit.name).reason}`,
      right: {
        ...spot(right),
        reason: `${right.name}. ${verdictOn(best, evening.kit.name).reason}`,
      },
      wrong: wrong.map((pair) => {
        const { reason, misconception } = verdictOn(pair, evening.kit.name);
        return {
          ...spot(pair.lights[1]),
          reason: `${pair.lights[1].name}. ${reason}`,
          ...(misconception === undefined ? {} : { misconception }),
        };
      }),
    });
  }
}

function pairsThatServe(draw: ItemDraw) {
  const { evening, good, close, inLine } = eveningWithPairs(draw);
  const right = distinct(pickSome(draw.random, good, 2));
  const wrong = distinct([
    ...pickSome(draw.random, close, 2),
    ...pickSome(draw.random, inLine, 2),
  ]).slice(0, 3);
  return several({
    prompt: `${evening.when}, with ${evening.kit.name}. All these stars may serve, each by itself. Which pairs are good ones?`,
    explanation: 'Far apart, and in different directions: both must hold.',
    right: right.map((pair) => ({
      text: pairInWords(pair),
      reason: verdictOn(pair, evening.kit.name).reason,
    })),
    wrong: wrong.map((pair) => {
      const { reason, misconception } = verdictOn(pair, evening.kit.name);
      return {
        text: pairInWords(pair),
        reason: `t${reason.slice(1)}`,
        ...(misconception === undefined ? {} : { misconception }),
      };
    }),
  });
}

function bestFirst(draw: ItemDraw) {
  for (;;) {
    const { evening, all } = eveningWithPairs(draw);
    const chosen: DrawnPair[] = [];
    for (const pair of draw.random.shuffle(all)) {
      const clear = chosen.every((one) => Math.abs(one.hits - pair.hits) >= clearlyBetter);
      // What a learner can see: closer pairs and pairs in line are worth less.
      if (clear && chosen.length < 4) chosen.push(pair);
    }
    const sorted = chosen.sort((a, b) => b.hits - a.hits);
    const falls = sorted.every((pair, i) => {
      const before = sorted[i - 1];
      return (
        before === undefined || isInLine(pair) || pair.separationDeg < before.separationDeg - 5
      );
    });
    if (sorted.length < 3 || !falls) continue;
    return order({
      prompt: `${evening.when}, with ${evening.kit.name}. Put the pairs in order by how many targets they bring into the eyepiece, the best first: ${draw.random.shuffle(sorted).map(names).join('; ')}.`,
      explanation: `Of 100 targets: ${sorted.map((pair) => `${names(pair)} ${String(pair.hits)}`).join(', ')}.`,
      steps: sorted.map(pairInWords),
      rules: sorted.slice(1).map((pair, i) => ({
        first: i,
        then: i + 1,
        reason: `of 100 targets it brings ${String(sorted[i]?.hits ?? 0)}, the other ${String(pair.hits)}: ${isInLine(pair) ? 'that one stands in line' : 'its stars are closer together'}.`,
      })),
    });
  }
}

function whatIsWrongWithThem(draw: ItemDraw) {
  const { evening, good, close, inLine } = eveningWithPairs(draw);
  const chosen = [
    { pair: pickOne(draw.random, good), verdict: 'A good pair' },
    { pair: pickOne(draw.random, close), verdict: 'Too close together' },
    { pair: pickOne(draw.random, inLine), verdict: 'One above the other' },
  ];
  return match({
    prompt: `${evening.when}, with ${evening.kit.name}. What do you say to the pairs ${draw.random
      .shuffle(chosen)
      .map(({ pair }) => names(pair))
      .join('; ')}?`,
    explanation: 'A good pair is six to twelve fists apart, and in different directions.',
    pairs: chosen.map(({ pair, verdict }) => {
      const { reason } = verdictOn(pair, evening.kit.name);
      return { left: pairInWords(pair), right: verdict, reason: `t${reason.slice(1)}` };
    }),
    spare: ['Too low in the sky'],
  });
}

function fistsBetween(draw: ItemDraw) {
  for (;;) {
    const { evening, all } = eveningWithPairs(draw);
    // At one height the way between two stars is easily reckoned: azimuth gaps shrink with the cosine.
    const level = all.filter(
      ({ lights, separationDeg }) =>
        Math.abs(lights[0].altitudeDeg - lights[1].altitudeDeg) < 8 &&
        lights[0].altitudeDeg < 42 &&
        separationDeg > 25 &&
        separationDeg < 120,
    );
    const pair = draw.random.pick(level);
    if (pair === undefined) continue;
    const fists = Math.round(pair.separationDeg / 5) / 2;
    return numeric({
      prompt: `${evening.when}. From ${pair.lights[0].name} straight over the sky to ${pair.lights[1].name} you count ${String(Math.floor(fists))}${fists % 1 === 0 ? '' : '½'} fists. How far apart are they?`,
      unit: 'degrees',
      key: 10 * fists,
      tolerance: { mode: 'absolute', full: 3, zero: 12 },
      explanation: `A fist is 10°: ${whole(10 * fists)}°. Six to twelve fists make a good pair, if the two stand in different directions.`,
      slips: [
        { gives: fists, reason: 'That is the number of fists. Each stands for 10°.' },
        {
          gives: 12.6 * fists,
          misconception: 'azimuth-gap-looks-wider',
          reason: 'That is how wide it looks. The fist does not stretch.',
        },
        { gives: 5 * fists, reason: 'A fist is 10°, not 5°.' },
      ],
    });
  }
}

export const whichPair: ItemFamily = {
  id: 'which-pair',
  lesson: 'choosing-alignment-stars',
  objective: 'pair',
  skill: 'choose-stars',
  title: 'Which two stars',
  version: 2,
  templates: {
    'which-two': whichTwo,
    'point-at-the-partner': pointAtThePartner,
    'pairs-that-serve': pairsThatServe,
    'best-first': bestFirst,
    'what-is-wrong-with-them': whatIsWrongWithThem,
    'fists-between': fistsBetween,
  },
};
