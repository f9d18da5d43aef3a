import { pickOne, pickSome } from '../../variants/pick-one';
import { discDrawing, ringShape, starShape } from '../clock-and-place/sky-drawings';
import { choice, match, numeric, order } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { whole } from './drawn-evening';
import {
  eveningWithPairs,
  isGood,
  isInLine,
  isTooClose,
  names,
  pairInWords,
  pairOf,
  servingStars,
  verdictOn,
  type DrawnPair,
} from './drawn-pairs';

const targetCounts = [20, 25, 40, 50, 60, 80] as const;

function howManyAreFound(draw: ItemDraw) {
  for (;;) {
    const { evening, all } = eveningWithPairs(draw);
    const pair = pickOne(draw.random, all);
    if (pair.hits < 15 || pair.hits > 92) continue;
    const targets = pickOne(draw.random, targetCounts);
    const key = (targets * pair.hits) / 100;
    const full = Math.max(1, targets / 40);
    return numeric({
      prompt: `${evening.when}. ${evening.kit.name}, aligned on ${names(pair)}, has a hit rate of ${String(pair.hits)} of 100. The class sends it to ${String(targets)} targets all over the sky. How many will be in the eyepiece, on the whole?`,
      unit: 'targets',
      key,
      tolerance: { mode: 'absolute', full, zero: Math.max(4, targets / 5) },
      explanation: `${String(pair.hits)} of 100 is the share: ${String(targets)} × ${String(pair.hits)} ÷ 100 is about ${whole(key)}.`,
      slips: [
        { gives: pair.hits, reason: 'That is for 100 targets.' },
        { gives: targets - key, reason: 'That many will be missed. Asked is how many are found.' },
        { gives: targets, reason: 'Not all of them. Only an excellent pair comes close to that.' },
      ].filter(({ gives }) => Math.abs(gives - key) > 1.5 * full),
    });
  }
}

const shares = [3, 25, 50, 75, 97] as const;
const inHundred = (share: number): string =>
  share <= 3
    ? 'Fewer than 10 of 100'
    : share >= 97
      ? 'More than 90 of 100'
      : `About ${String(share)} of 100`;

/** As far apart as nobody who knows the rules can doubt, in targets of 100. */
const clearlyOther = 40;

/** The band that a hit rate falls into, when it does so clearly. */
function bandOf(hits: number): number | null {
  if (hits <= 7) return 3;
  if (hits >= 93) return 97;
  return [25, 50, 75].find((band) => Math.abs(hits - band) <= 7) ?? null;
}

function howGoodIsIt(draw: ItemDraw) {
  for (;;) {
    const { evening, all } = eveningWithPairs(draw);
    const wanted = pickOne(draw.random, [3, 50, 97]);
    const pair = draw.random.pick(
      all.filter(
        (one) =>
          bandOf(one.hits) === wanted && (wanted !== 3 || isInLine(one) || one.separationDeg < 12),
      ),
    );
    if (pair === undefined) continue;
    const name = `${names(pair)}: ${inHundred(wanted).toLowerCase()}`;
    const why = verdictOn(pair, evening.kit.name);
    return choice({
      prompt: `${evening.when}. ${evening.kit.name} is aligned on ${pairInWords(pair)}, ${whole(pair.separationDeg)}° apart. Of 100 targets, how many will be in the eyepiece?`,
      explanation: why.reason,
      right: { text: name, reason: why.reason },
      wrong: shares
        .filter((share) => Math.abs(share - wanted) > clearlyOther)
        .map((share) => ({
          text: `${names(pair)}: ${inHundred(share).toLowerCase()}`,
          reason: share > wanted ? `Not so many. ${why.reason}` : `More than that. ${why.reason}`,
          ...(share > wanted && why.misconception !== undefined
            ? { misconception: why.misconception }
            : {}),
        })),
    });
  }
}

function ratesAndPairs(draw: ItemDraw) {
  for (;;) {
    const { evening, good, close, inLine, all } = eveningWithPairs(draw);
    const middle = all.filter(
      ({ hits, separationDeg, azimuthGapDeg }) =>
        hits > 35 && hits < 72 && separationDeg > 22 && azimuthGapDeg > 20,
    );
    const chosen: DrawnPair[] = [
      pickOne(draw.random, good),
      ...pickSome(draw.random, middle, 1),
      pickOne(draw.random, draw.random.integer(0, 1) === 0 ? close : inLine),
    ];
    const sorted = [...chosen].sort((a, b) => b.hits - a.hits);
    if (
      chosen.length < 3 ||
      sorted.some((one, i) => i > 0 && (sorted[i - 1]?.hits ?? 0) - one.hits < 18)
    )
      continue;
    const text = ({ hits }: DrawnPair) => (hits < 1 ? 'None of 100' : `${String(hits)} of 100`);
    return match({
      prompt: `${evening.when}, with ${evening.kit.name}. Which hit rate belongs to which: ${draw.random.shuffle(chosen).map(names).join('; ')}?`,
      explanation:
        'The farther apart, up to about nine fists, and the more different the directions, the more targets land in the eyepiece.',
      pairs: chosen.map((pair) => {
        const { reason } = verdictOn(pair, evening.kit.name);
        return {
          left: `${pairInWords(pair)}, ${whole(pair.separationDeg)}° apart`,
          right: text(pair),
          reason: `t${reason.slice(1)}`,
        };
      }),
    });
  }
}

const changes = (from: number, to: number): string =>
  to > from ? `It rises to about ${String(to)} of 100` : `It falls to about ${String(to)} of 100`;

function swapOneStar(draw: ItemDraw) {
  for (;;) {
    const { evening, all } = eveningWithPairs(draw);
    const before = pickOne(draw.random, all);
    const [kept] = before.lights;
    const other = draw.random.pick(
      servingStars(evening).filter((light) => !before.lights.includes(light)),
    );
    if (other === undefined) continue;
    const after = pairOf(evening, kept, other);
    const poor = (pair: DrawnPair) => isTooClose(pair) || isInLine(pair);
    // From a pair that is plainly poor to one that is plainly good, or back.
    if (!(poor(before) && isGood(after)) && !(isGood(before) && poor(after))) continue;
    if (Math.abs(after.hits - before.hits) < 40) continue;
    const [dropped] = before.lights.slice(1);
    if (dropped === undefined) continue;
    const opposite =
      after.hits > before.hits ? Math.max(0, before.hits - 15) : Math.min(99, before.hits + 4);
    const half = Math.round((before.hits + after.hits) / 2);
    const why = verdictOn(after, evening.kit.name);
    return choice({
      prompt: `${evening.when}. ${evening.kit.name} is aligned on ${pairInWords(before)}: ${String(before.hits)} of 100 targets land in the eyepiece. What becomes of the hit rate when ${pairInWords(after).split(' and ').slice(1).join(' and ')} takes the place of ${dropped.name}?`,
      explanation: why.reason,
      right: { text: changes(before.hits, after.hits), reason: why.reason },
      wrong: [
        {
          text: `It stays at about ${String(before.hits)} of 100`,
          reason: `It matters a great deal which two they are. ${why.reason}`,
        },
        ...(opposite === before.hits
          ? []
          : [
              {
                text: changes(before.hits, opposite),
                reason: `It goes the other way. ${why.reason}`,
                ...(why.misconception === undefined ? {} : { misconception: why.misconception }),
              },
            ]),
        {
          text: changes(before.hits, half),
          reason: `It goes much farther than that. ${why.reason}`,
        },
      ],
      afterwards: discDrawing(
        [starShape(kept, true), starShape(other, true), ringShape(dropped), starShape(dropped)],
        {
          names: [kept, other, dropped].map((at) => ({ at, name: at.name })),
          alternative: `The whole sky with ${kept.name} and ${other.name}, and a ring round ${dropped.name}. ${why.reason}`,
        },
      ),
    });
  }
}

function whatTheyCost(draw: ItemDraw) {
  for (;;) {
    const { evening, all } = eveningWithPairs(draw);
    const chosen: DrawnPair[] = [];
    for (const pair of draw.random.shuffle(all)) {
      if (chosen.length < 4 && chosen.every((one) => Math.abs(one.hits - pair.hits) >= 12))
        chosen.push(pair);
    }
    if (chosen.length < 4) continue;
    const sorted = chosen.sort((a, b) => a.hits - b.hits);
    const missed = ({ hits }: DrawnPair) => 100 - hits;
    return order({
      prompt: `${evening.when}. With ${evening.kit.name}, of 100 targets land in the eyepiece: ${draw.random
        .shuffle(sorted)
        .map((pair) => `${String(pair.hits)} with ${names(pair)}`)
        .join(', ')}. Put the pairs in order by how many targets each costs, the most first.`,
      explanation: `A pair costs what it misses: ${sorted.map((pair) => `${names(pair)} ${String(missed(pair))}`).join(', ')}.`,
      steps: sorted.map(names),
      rules: sorted.slice(1).map((pair, i) => ({
        first: i,
        then: i + 1,
        reason: `it costs ${String(missed(sorted[i] ?? pair))} targets of 100, the other ${String(missed(pair))}.`,
      })),
    });
  }
}

export const whatAPairCosts: ItemFamily = {
  id: 'what-a-pair-costs',
  lesson: 'choosing-alignment-stars',
  objective: 'cost',
  skill: 'choose-stars',
  title: 'What a poor pair costs',
  version: 2,
  templates: {
    'how-many-are-found': howManyAreFound,
    'how-good-is-it': howGoodIsIt,
    'rates-and-pairs': ratesAndPairs,
    'swap-one-star': swapOneStar,
    'what-they-cost': whatTheyCost,
  },
};
