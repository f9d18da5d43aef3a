import { firstSlew } from '../../levelling/tilt-consequences';
import { fieldRadiusArcmin } from '../../pointing/field-radius';
import type { Random } from '../../variants/random';
import { choice, match, numeric, point, several } from '../build-item';
import type { ItemDraw, ItemFamily, ItemKit } from '../item-family';
import { onCircle, planOf, wind } from './plan-of-a-lean';
import { figures, grounds, one } from './words';

type Lean = { tiltDeg: number; high: number };

const drawLean = (random: Random): Lean => ({
  tiltDeg: random.integer(4, 14) / 10,
  high: random.integer(0, 7),
});

/** How far above a star the first slew lands, arcminutes; the star so many eighths from the high side. */
const upArcmin = ({ tiltDeg, high }: Lean, eighth: number, altitudeDeg: number): number =>
  firstSlew(
    { tiltDeg, risesTowardsDeg: 45 * high },
    { azimuthDeg: (45 * (((high + eighth) % 8) + 8)) % 360, altitudeDeg },
  ).upArcmin;

const why =
  'A base that stands high on one side carries the whole sky of the telescope up with it there, and down on the other side. Across the slope the height is right.';

const landing = (arcmin: number): string => {
  const whole = Math.round(arcmin);
  if (Math.abs(whole) <= 1) return 'At the right height';
  return `${String(Math.abs(whole))}′ too ${whole > 0 ? 'high' : 'low'}`;
};

function howHigh({ random }: ItemDraw) {
  const lean = drawLean(random);
  const eighth = one(random, [0, 4, 3, 5, 1, 7]);
  const altitudeDeg = random.integer(25, 45);
  const key = upArcmin(lean, eighth, altitudeDeg);
  const t = 60 * lean.tiltDeg;
  const slanted = eighth % 4 !== 0;
  return numeric({
    prompt: `The base stands ${figures(lean.tiltDeg, 1)}° high in the ${wind(lean.high)}. Nothing is aligned yet, and the first slew goes to a star in the ${wind(lean.high + eighth)}. How far too high does the tube land? Write a minus for too low.`,
    unit: 'arcminutes',
    key,
    tolerance: { mode: 'absolute', full: 4, zero: 16 },
    explanation: `${figures(lean.tiltDeg, 1)}° are ${figures(t)}′. ${why} ${
      slanted
        ? 'Halfway between the slope and across it, 45° off, it is 0.7 of the tilt.'
        : 'Straight along the slope it is the whole tilt.'
    }`,
    slips: [
      {
        gives: Math.round(-key),
        reason: `The other way: the star is on the ${key > 0 ? 'high' : 'low'} side, so the tube lands too ${key > 0 ? 'high' : 'low'}.`,
      },
      ...(slanted && 0.3 * t > 6
        ? [
            {
              gives: Math.round(key > 0 ? t : -t),
              reason: 'That is the whole tilt. At 45° from the slope only 0.7 of it is left.',
            },
          ]
        : []),
      {
        gives: lean.tiltDeg * (key > 0 ? 1 : -1),
        reason: 'Those are degrees. One degree is 60 arcminutes.',
      },
    ].filter(({ gives }) => Math.abs(gives - key) > 5),
  });
}

/** The field of the eyepiece that one centres with. */
function centringField(kit: ItemKit): number {
  const eyepiece = kit.eyepieces.find(({ id }) => id === kit.centringEyepieceId);
  if (eyepiece === undefined) throw new Error(`${kit.name} has no eyepiece to centre with`);
  return Math.round(fieldRadiusArcmin(kit.telescope, eyepiece));
}

function inTheEyepiece({ random, world }: ItemDraw) {
  const kit = random.pick(world.kits);
  if (kit === undefined) throw new Error('a world has telescopes');
  const field = centringField(kit);
  const high = random.integer(0, 7);
  // Never near the field's edge, where a hand's width decides.
  const shares = [0.4, 0.5, 0.6, 0.7, 1.3, 1.5, 1.7] as const;
  const tiltDeg = Math.round((10 * field * one(random, shares)) / 60) / 10;
  const eighth = random.pick([0, 4]) ?? 0;
  const up = upArcmin({ tiltDeg, high }, eighth, random.integer(25, 45));
  const off = Math.abs(Math.round(up));
  const inside = off < field;
  const way = up > 0 ? 'above' : 'below';
  const right = inside
    ? `Yes: it is ${String(off)}′ off, and the field reaches ${String(field)}′`
    : `No: it is ${String(off)}′ off, and the field reaches ${String(field)}′`;
  return choice({
    prompt: `${kit.name} stands on a base that is ${figures(tiltDeg, 1)}° high in the ${wind(high)}. Its 25 mm eyepiece shows ${String(field)}′ to each side. The first slew goes to a star in the ${wind(high + eighth)}. Is the star in the eyepiece?`,
    explanation: `${figures(tiltDeg, 1)}° are ${String(off)}′, and the star stands on the slope’s own line, so all of it counts: the tube lands ${String(off)}′ ${way} the star. ${inside ? 'Level enough for this eyepiece.' : 'Not level enough for this eyepiece: look through the finder, or level again.'}`,
    right: {
      text: right,
      reason: inside
        ? `Not in the middle, but ${String(field - off)}′ inside the edge.`
        : `It is ${String(off - field)}′ outside the edge.`,
    },
    wrong: [
      inside
        ? {
            text: `No: the lean counts twice, so it is ${String(2 * off)}′ off`,
            reason: 'It counts once. Twice the tilt is what the low side is below the high side.',
          }
        : {
            text: `Yes: it is ${String(off)}′ off, and the field is ${String(2 * field)}′ wide`,
            reason: `${String(2 * field)}′ is from edge to edge. From the middle, where the tube points, it is ${String(field)}′.`,
          },
      {
        text: 'Yes, in the middle: the computer allows for the lean',
        reason:
          'Not yet. Before the alignment the computer takes the base as level; only stars tell it how the base stands.',
      },
      inside
        ? {
            text: `No: ${figures(tiltDeg, 1)}° off level is too much for any eyepiece`,
            reason: `${figures(tiltDeg, 1)}° are ${String(off)}′, and this eyepiece shows ${String(field)}′ to each side.`,
            misconception: 'tilt-spoils-alignment' as const,
          }
        : {
            text: `No: the lean counts twice, so it is ${String(2 * off)}′ off`,
            reason: `It counts once: ${String(off)}′. That is already outside.`,
          },
    ],
  });
}

function pointWorst({ random }: ItemDraw) {
  const lean = drawLean(random);
  const { tiltDeg, high } = lean;
  const wanted = one(random, ['too high', 'too low'] as const);
  const key = wanted === 'too high' ? 0 : 4;
  const altitudeDeg = random.integer(25, 45);
  const spot = (eighth: number, reason: string) => ({
    ...onCircle(high + eighth, 108),
    where: `towards a star in the ${wind(high + eighth)}`,
    reason,
  });
  const said = (eighth: number) => landing(upArcmin(lean, eighth, altitudeDeg)).toLowerCase();
  const opposite = 4 - key;
  return point({
    prompt: `This base leans by ${figures(tiltDeg, 1)}°, and nothing is aligned yet. Towards which of these stars, all about ${String(altitudeDeg)}° up, does a first slew land farthest ${wanted}?`,
    drawing: planOf(high),
    explanation: why,
    right: spot(key, `There it lands ${said(key)}: the whole tilt.`),
    wrong: [
      spot(opposite, `There it lands ${said(opposite)}: the other way.`),
      spot(2, `Across the slope it lands ${said(2)}, a little to the side.`),
      spot(
        key === 0 ? 1 : 3,
        `Off the slope’s line by 45° it lands ${said(1 + (key === 0 ? 0 : 2))}: 0.7 of the tilt.`,
      ),
    ],
  });
}

function matchLandings({ random }: ItemDraw) {
  const lean = drawLean(random);
  const altitudeDeg = random.integer(25, 40);
  const eighths = [0, one(random, [1, 7]), one(random, [2, 6]), 4];
  const t = Math.round(60 * lean.tiltDeg);
  return match({
    prompt: `A base stands ${figures(lean.tiltDeg, 1)}° high in the ${wind(lean.high)}, and nothing is aligned yet. Where does a first slew land at each of these stars?`,
    explanation: `${why} At 45° from the high side it is 0.7 of the tilt.`,
    pairs: eighths.map((eighth) => {
      const up = upArcmin(lean, eighth, altitudeDeg);
      return {
        left: `Star in the ${wind(lean.high + eighth)}`,
        right: landing(up),
        reason: `it is ${String(45 * Math.min(eighth, 8 - eighth))}° from the high side.`,
      };
    }),
    spare: [`${String(2 * t)}′ too low`],
  });
}

function whichTooLow({ random }: ItemDraw) {
  const lean = drawLean(random);
  const wanted = one(random, ['high', 'low'] as const);
  const altitudeDeg = random.integer(25, 40);
  // Across the slope is left out: there it is a matter of a minute.
  const eighths = random.shuffle([0, 1, 3, 4, 5, 7]).slice(0, 5);
  const options = eighths.map((eighth) => {
    const up = upArcmin(lean, eighth, altitudeDeg);
    return {
      right: up > 0 === (wanted === 'high'),
      text: `A star in the ${wind(lean.high + eighth)}`,
      reason: `It stands on the ${up > 0 ? 'high' : 'low'} side: the tube lands ${landing(up).toLowerCase()}.`,
    };
  });
  return several({
    prompt: `The base ${one(random, grounds)} stands ${figures(lean.tiltDeg, 1)}° high in the ${wind(lean.high)}. Before any alignment, at which stars does the tube land too ${wanted}?`,
    explanation: why,
    right: options.filter(({ right }) => right).map(({ text, reason }) => ({ text, reason })),
    wrong: options.filter(({ right }) => !right).map(({ text, reason }) => ({ text, reason })),
  });
}

/** What a base off level does before the computer knows of it. */
export const firstSlewsOnALean: ItemFamily = {
  id: 'first-slews-on-a-lean',
  lesson: 'level-enough',
  objective: 'cost',
  skill: 'level',
  title: 'What a lean costs the first slews',
  version: 1,
  templates: {
    'how-high': howHigh,
    'in-the-eyepiece': inTheEyepiece,
    'point-worst': pointWorst,
    'match-landings': matchLandings,
    'which-too-low': whichTooLow,
  },
};
