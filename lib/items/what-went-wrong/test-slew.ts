import type { Random } from '../../variants/random';
import { apartDeg } from '../align-on-two-stars/aligning';
import {
  chartPoint,
  chartWhere,
  chartWords,
  skyChart,
  type ChartPlace,
} from '../align-on-two-stars/sky-chart';
import { deg, placeText } from '../align-on-two-stars/words';
import { pickOne } from '../../variants/pick-one';
import { choice, match, numeric, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { apartOf, firstSlew, landingText, suspectText, type Suspect } from './first-slew';

type Riddle = {
  first: ChartPlace;
  suspects: readonly [Suspect, Suspect];
  /** Most telling first; the first clearly so. */
  tests: readonly (ChartPlace & { apart: number })[];
};

/** Two suspects that explain one and the same first slew, and stars to test them on. */
function riddle(random: Random): Riddle {
  for (;;) {
    const first: ChartPlace = {
      azimuthDeg: random.integer(0, 35) * 10,
      altitudeDeg: random.integer(5, 9) * 5,
    };
    const size = random.integer(15, 45) / 10;
    const sign = pickOne(random, [1, -1]);
    // Both lift the tube by as much in the direction of the first star.
    const suspects: [Suspect, Suspect] = [
      { kind: 'zero', highDeg: sign * size },
      {
        kind: 'lean',
        tiltDeg: size,
        risesTowardsDeg: (first.azimuthDeg + (sign > 0 ? 0 : 180)) % 360,
      },
    ];
    if (apartOf(firstSlew(suspects[0], first), firstSlew(suspects[1], first)) > 0.1) continue;
    const places = [15, 60, 100, 180].map((turn, i): ChartPlace => ({
      azimuthDeg:
        (first.azimuthDeg + pickOne(random, [1, -1]) * (turn + random.integer(-8, 8)) + 720) % 360,
      altitudeDeg: [40, 55, 35, 45][i] ?? 40,
    }));
    const tests = places
      .map((place) => ({
        ...place,
        apart: apartOf(firstSlew(suspects[0], place), firstSlew(suspects[1], place)),
      }))
      .sort((a, b) => b.apart - a.apart);
    const [best, next] = tests;
    if (best === undefined || next === undefined || best.apart < 1.3 * next.apart) continue;
    if (new Set([first, ...tests].map(placeText)).size < 5) continue;
    if (tests.some((one) => apartDeg(one, first) < 6)) continue;
    return { first, suspects, tests };
  }
}

const both = ({ suspects }: Riddle): string =>
  suspects.map((one) => suspectText(one).replace(/^The/, 'the')).join(', or ');
const ended = ({ suspects, first }: Riddle): string =>
  deg(Math.abs(firstSlew(suspects[0], first).upDeg));
const way = ({ suspects, first }: Riddle): string =>
  firstSlew(suspects[0], first).upDeg > 0 ? 'high' : 'low';

function bestTest({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const one = riddle(random);
  const [best, ...others] = one.tests;
  if (best === undefined) throw new Error('a riddle has tests');
  return choice({
    prompt: `${kit.name}’s first slew, to a star ${placeText(one.first)}, ended ${ended(one)} too ${way(one)}. Either ${both(one)}. You may make one test slew. To which star?`,
    right: {
      text: `One ${placeText(best)}`,
      reason: `There the two suspects end ${deg(best.apart)} apart: you will see which it is.`,
    },
    wrong: others.map((test) => ({
      text: `One ${placeText(test)}`,
      reason: `There the two suspects end only ${deg(test.apart)} apart. Another star tells more.`,
      ...(test.apart < 0.6 ? { misconception: 'one-slew-tells-all' as const } : {}),
    })),
    explanation:
      'A wrong level lifts every slew alike. A lean lifts one side and lowers the other. Test on the opposite side of the sky.',
  });
}

function pointAtTest({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const one = riddle(random);
  const marks = [
    { ...one.first, label: '1' },
    ...one.tests.map((test) => ({ ...test, kind: 'target' as const })),
  ];
  const spots = one.tests.map((test) => ({
    ...chartPoint(test),
    where: chartWhere(test),
    reason: `There the two suspects end ${deg(test.apart)} apart.`,
  }));
  const [right, ...wrong] = spots;
  if (right === undefined) throw new Error('a riddle has tests');
  return point({
    prompt: `${kit.name}’s slew to star 1 ended ${ended(one)} too ${way(one)}. Either ${both(one)}. Point at the open circle where one test slew tells.`,
    drawing: skyChart({ marks, alternative: chartWords(marks) }),
    right,
    wrong,
    explanation: 'Where the two suspects would end farthest apart, a single slew tells.',
  });
}

function whatItTells({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const one = riddle(random);
  const [best] = one.tests;
  if (best === undefined) throw new Error('a riddle has tests');
  const guilty = pickOne(random, [0, 1] as const);
  const innocent = guilty === 0 ? 1 : 0;
  const landed = firstSlew(one.suspects[guilty], best);
  const other = firstSlew(one.suspects[innocent], best);
  return choice({
    prompt: `${kit.name}’s first slew, ${placeText(one.first)}, ended ${ended(one)} too ${way(one)}. The test slew, ${placeText(best)}, ended ${landingText(landed)}. What is it?`,
    right: {
      text: suspectText(one.suspects[guilty]),
      reason: `That brings the first ${ended(one)} ${way(one)} and the test ${landingText(landed)}.`,
    },
    wrong: [
      {
        text: suspectText(one.suspects[innocent]),
        reason: `The test would have ended ${landingText(other)}.`,
        misconception: 'one-slew-tells-all',
      },
      {
        text: `The tube stood ${ended(one)} right of north at the start`,
        reason: 'That moves a slew sideways, not up or down.',
      },
      {
        text: 'The tube crept only after the first star',
        reason: `Then the first slew would not have been ${ended(one)} too ${way(one)}.`,
      },
    ],
    explanation: 'Ask each suspect what it would have done at both stars. One of them fits both.',
  });
}

function predictIt({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const size = random.integer(4, 16) / 2;
  const towards = random.integer(0, 35) * 10;
  const altitudeDeg = random.integer(5, 11) * 5;
  const azimuthDeg = (towards + 180) % 360;
  const landing = firstSlew(
    { kind: 'lean', tiltDeg: size, risesTowardsDeg: towards },
    { azimuthDeg, altitudeDeg },
  );
  const key = Number((-landing.upDeg).toFixed(2));
  return numeric({
    prompt: `With ${kit.name} a first slew at azimuth ${String(towards)}° ended ${deg(size)} too high. You think that the base leans. If so, how far too low must a test slew end exactly opposite, at azimuth ${String(azimuthDeg)}° and ${String(altitudeDeg)}° up?`,
    unit: 'degrees',
    key,
    tolerance: { mode: 'absolute', full: 0.2, zero: 1.2 },
    explanation: `What rises on one side by ${deg(size)} falls on the other by as much. If the slew ends ${deg(size)} too high there as well, it is no lean.`,
    slips: [
      {
        gives: -size,
        reason: 'That would be too high again: a wrong level at the start, no lean.',
      },
      {
        gives: 2 * size,
        reason: 'From one side to the other it is that much. Below the star it is half.',
      },
    ],
  });
}

function suspectsMatch({ random }: ItemDraw) {
  for (;;) {
    const test: ChartPlace = {
      azimuthDeg: random.integer(0, 35) * 10,
      altitudeDeg: random.integer(6, 10) * 5,
    };
    const size = random.integer(20, 45) / 10;
    const suspects: Suspect[] = [
      { kind: 'zero', highDeg: size },
      { kind: 'lean', tiltDeg: size, risesTowardsDeg: (test.azimuthDeg + 180) % 360 },
      { kind: 'north', rightDeg: pickOne(random, [1, -1]) * (size + 3) },
    ];
    const landings = suspects.map((suspect) => landingText(firstSlew(suspect, test)));
    if (new Set(landings).size < 3) continue;
    return match({
      prompt: `Three suspects, and one test slew to a star ${placeText(test)}. Where would it end for each?`,
      pairs: suspects.map((suspect, i) => ({
        left: suspectText(suspect),
        right: `It ends ${landings[i] ?? ''}`,
        reason: {
          zero: 'A wrong level lifts every slew alike.',
          lean: 'Opposite to where the base rises, it lowers the tube.',
          north: 'A wrong north turns the tube sideways.',
          clock: 'A wrong hour turns the sky about the pole.',
        }[suspect.kind],
      })),
      explanation: 'Say before the slew what each suspect predicts. Then the slew decides.',
    });
  }
}

/** One slew that tells two suspects apart. */
export const testSlew: ItemFamily = {
  id: 'test-slew',
  lesson: 'what-went-wrong',
  objective: 'test-slew',
  skill: 'diagnose',
  title: 'The slew that tells',
  version: 1,
  templates: {
    'best-test': bestTest,
    'point-at-test': pointAtTest,
    'what-it-tells': whatItTells,
    'predict-it': predictIt,
    'suspects-match': suspectsMatch,
  },
};
