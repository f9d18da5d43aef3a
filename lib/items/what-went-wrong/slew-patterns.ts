import { degreesToRadians } from '../../units/angle';
import type { Random } from '../../variants/random';
import { apartDeg } from '../align-on-two-stars/aligning';
import {
  chartPoint,
  chartWhere,
  chartWords,
  skyChart,
  type ChartPlace,
} from '../align-on-two-stars/sky-chart';
import { deg, figures, placeText } from '../align-on-two-stars/words';
import { pickOne } from '../../variants/pick-one';
import { windOf } from '../../wording/compass-points';
import { choice, match, numeric, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { apartOf, firstSlew, landingText, suspectText, type Suspect } from './first-slew';

const eight = [0, 45, 90, 135, 180, 225, 270, 315];

export function someSuspect(random: Random, kind: Suspect['kind']): Suspect {
  const size = random.integer(20, 60) / 10;
  switch (kind) {
    case 'lean':
      return { kind, tiltDeg: size, risesTowardsDeg: pickOne(random, eight) };
    case 'zero':
      return { kind, highDeg: pickOne(random, [1, -1]) * size };
    case 'north':
      return { kind, rightDeg: pickOne(random, [1, -1]) * (size + 4) };
    case 'clock':
      return {
        kind,
        fastHours: pickOne(random, [1, -1]),
        latitudeDeg: pickOne(random, [52, 45, -35, 35]),
      };
  }
}

const kinds = ['lean', 'zero', 'north', 'clock'] as const;

/** Two stars, well up, in different parts of the sky. */
function twoStars(random: Random): readonly [ChartPlace, ChartPlace] {
  for (;;) {
    const star = (): ChartPlace => ({
      azimuthDeg: random.integer(0, 35) * 10,
      altitudeDeg: random.integer(3, 6) * 10,
    });
    const [a, b] = [star(), star()];
    if (apartDeg(a, b) > 50) return [a, b];
  }
}

function twoArrows({ random }: ItemDraw) {
  for (;;) {
    const [a, b] = twoStars(random);
    const suspects = random.shuffle(kinds).map((kind) => someSuspect(random, kind));
    const shown = suspects.map(
      (suspect) => [firstSlew(suspect, a), firstSlew(suspect, b)] as const,
    );
    const [key, ...others] = suspects;
    const [seen, ...unseen] = shown;
    if (key === undefined || seen === undefined) continue;
    const told = unseen.every(
      (other) => Math.max(apartOf(seen[0], other[0]), apartOf(seen[1], other[1])) > 2.5,
    );
    if (!told || seen.some(({ lands }) => lands.altitudeDeg < 5 || lands.altitudeDeg > 85))
      continue;
    const marks = [
      { ...a, label: 'A' },
      { ...b, label: 'B' },
    ];
    return choice({
      prompt: `${suspectLatitude(suspects)}, two first slews, before any alignment. The one to star A ends ${landingText(seen[0])}; the one to B ${landingText(seen[1])}. The arrows lead from the star toward where the tube stopped, drawn longer than they are. What fits both?`,
      drawing: skyChart({
        marks,
        arrows: [
          { from: a, to: seen[0].lands },
          { from: b, to: seen[1].lands },
        ],
        alternative: `${chartWords(marks)} The slew to A ended ${landingText(seen[0])}; the slew to B ended ${landingText(seen[1])}.`,
      }),
      right: {
        text: suspectText(key),
        reason: `That brings A ${landingText(seen[0])}, and B ${landingText(seen[1])}.`,
      },
      wrong: others.map((suspect, i) => ({
        text: suspectText(suspect),
        reason: `Then A would end ${landingText(unseen[i]?.[0] ?? seen[0])}, and B ${landingText(unseen[i]?.[1] ?? seen[1])}.`,
      })),
      explanation:
        'A wrong level at the start: the same height everywhere. A wrong north: sideways everywhere, to one side. A lean: high on one side of the sky, low on the other. A wrong hour: round the pole.',
    });
  }
}

const suspectLatitude = (suspects: readonly Suspect[]): string => {
  const clock = suspects.find((one) => one.kind === 'clock');
  const latitude = clock?.kind === 'clock' ? clock.latitudeDeg : 50;
  return `At ${String(Math.abs(latitude))}° ${latitude < 0 ? 'south' : 'north'}`;
};

function highestLanding({ random }: ItemDraw) {
  const towards = random.integer(0, 35) * 10;
  const tiltDeg = random.integer(10, 40) / 10;
  const offsets = [0, 80, 140, -110].map((turn) => turn + random.integer(-10, 10));
  const altitudes = [35, 45, 55, 40];
  const stars = random.shuffle(offsets).map((turn, i): ChartPlace => ({
    azimuthDeg: (towards + turn + 360) % 360,
    altitudeDeg: altitudes[i] ?? 40,
  }));
  const suspect: Suspect = { kind: 'lean', tiltDeg, risesTowardsDeg: towards };
  const byHeight = stars
    .map((star) => ({ star, landing: firstSlew(suspect, star) }))
    .sort((one, other) => other.landing.upDeg - one.landing.upDeg);
  const spots = byHeight.map(({ star, landing }) => ({
    ...chartPoint(star),
    where: chartWhere(star),
    reason: `There the first slew ends ${landingText(landing)}.`,
  }));
  const [right, ...wrong] = spots;
  if (right === undefined) throw new Error('there are four stars');
  return point({
    prompt: `A base rises ${deg(tiltDeg)} toward azimuth ${String(towards)}°. It is believed level. Point at the star above which the first slew ends highest.`,
    drawing: skyChart({ marks: stars, alternative: chartWords(stars) }),
    right,
    wrong,
    explanation: `A base that rises toward azimuth ${String(towards)}° lifts the tube there by ${deg(tiltDeg)}, and lowers it on the opposite side.`,
  });
}

function besideNorth({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const declination = random.integer(8, 16);
  const altitudeDeg = pickOne(random, [60, 70, 75]);
  const landing = firstSlew(
    { kind: 'north', rightDeg: declination },
    { azimuthDeg: 120, altitudeDeg },
  );
  const key = Math.hypot(landing.rightDeg, landing.upDeg);
  const side = pickOne(random, ['east', 'west']);
  return numeric({
    prompt: `${kit.name}’s tube was set to north by a needle that points ${String(declination)}° ${side} of true north. The first slew goes to a star ${String(altitudeDeg)}° up. How far beside it does the tube stop, on the sky? (A turn of 10° in azimuth is ${figures(10 * Math.cos(degreesToRadians(altitudeDeg)))}° wide there.)`,
    unit: 'degrees',
    key: Number(key.toFixed(2)),
    tolerance: { mode: 'relative', full: 0.07, zero: 0.35 },
    explanation: `${String(declination)}° of azimuth are ${figures(key)}° on the sky, ${String(altitudeDeg)}° up: the higher a star, the narrower a degree of azimuth.`,
    slips: [
      {
        gives: declination,
        reason: 'That is the turn in azimuth. High up, that is less on the sky.',
      },
    ],
  });
}

function leanInHeight({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const tiltDeg = random.integer(4, 10) / 2;
  const towards = pickOne(random, eight);
  const turn = pickOne(random, [60, 120, 180]);
  const azimuthDeg = (towards + turn) % 360;
  // At low altitude the tube's height follows the slope of the base in that direction.
  const key = tiltDeg * Math.cos(degreesToRadians(turn));
  const share = { 60: 'half of it', 120: 'half of it, downward', 180: 'all of it, downward' }[turn];
  return numeric({
    prompt: `${kit.name}’s base rises ${String(tiltDeg)}° toward azimuth ${String(towards)}° and is believed level. A first slew goes to a star at azimuth ${String(azimuthDeg)}°, ${String(turn)}° round from there. How far above the star does it end? (Below it: write a minus. A lean counts in full where the base rises, half as much 60° round, and the other way beyond 90°.)`,
    unit: 'degrees',
    key: Number(key.toFixed(2)),
    tolerance: { mode: 'absolute', full: 0.3, zero: 1.5 },
    explanation: `${String(turn)}° round from where the base rises, the tube is lifted by ${share}: ${String(tiltDeg)}° × ${figures(Math.cos(degreesToRadians(turn)))} = ${figures(key, 2)}°.`,
    slips: [
      {
        gives: Number((-key).toFixed(2)),
        reason: 'Right size, wrong way: see whether the base rises or falls there.',
      },
      { gives: tiltDeg, reason: 'That is so only where the base rises.' },
    ],
  });
}

function patternMatch({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const size = deg(random.integer(15, 45) / 10);
  const wind = windOf(pickOne(random, eight));
  const ask = pickOne(random, ['What made each of them?', 'Which cause leaves which pattern?']);
  return match({
    prompt: `Four evenings with ${kit.name}, and what the first slews did. ${ask}`,
    pairs: [
      {
        left: `All end ${size} too high, all round the sky`,
        right: 'The tube was not level at the start',
        reason: 'Altitude is counted from there, the same in every direction.',
      },
      {
        left: 'All end too far right, less so for high stars',
        right: 'The tube was not set to north',
        reason: 'Azimuth is counted from there; high up a degree of it is narrow.',
      },
      {
        left: `Too high in the ${wind}, too low on the opposite side`,
        right: 'The base leans',
        reason: 'It lifts the tube where it rises, and lowers it where it falls.',
      },
      {
        left: 'Round the pole, most for stars far from it',
        right: 'The clock or the longitude is wrong',
        reason: 'Time turns the sky about its pole, and near the pole hardly anything moves.',
      },
    ],
    explanation: 'One slew fits many causes. The pattern of two or three tells them apart.',
  });
}

function fitsTheLean({ random }: ItemDraw) {
  const tiltDeg = random.integer(15, 40) / 10;
  const towards = pickOne(random, eight);
  const suspect: Suspect = { kind: 'lean', tiltDeg, risesTowardsDeg: towards };
  const stars = random.shuffle([0, 180, 45, 225, 135]).map((turn): ChartPlace => ({
    azimuthDeg: (towards + turn + 360) % 360,
    altitudeDeg: random.integer(6, 10) * 5,
  }));
  const clear = stars.filter((star) => Math.abs(firstSlew(suspect, star).upDeg) > 0.6).slice(0, 4);
  const told = clear.map((star, i) => {
    const { upDeg } = firstSlew(suspect, star);
    const truly = i < 2;
    const way = upDeg > 0 === truly ? 'too high' : 'too low';
    return {
      truly,
      text: `A star ${placeText(star)}: the slew ends ${way}`,
      reason: `With this lean it ends ${deg(Math.abs(upDeg))} ${upDeg > 0 ? 'high' : 'low'} there.`,
    };
  });
  const plain = ({ text, reason }: (typeof told)[number]) => ({ text, reason });
  return several({
    prompt: `You suspect that the base rises ${deg(tiltDeg)} toward the ${windOf(towards)}. Which first slews would fit that?`,
    right: told.filter(({ truly }) => truly).map(plain),
    wrong: told.filter(({ truly }) => !truly).map(plain),
    explanation: `Too high on the side where the base rises, the ${windOf(towards)}; too low on the opposite side.`,
  });
}

/** A turn, a lean, a wrong zero: by the pattern of the first slews. */
export const slewPatterns: ItemFamily = {
  id: 'slew-patterns',
  lesson: 'what-went-wrong',
  objective: 'pattern',
  skill: 'diagnose',
  title: 'What the first slews have in common',
  version: 2,
  templates: {
    'two-arrows': twoArrows,
    'highest-landing': highestLanding,
    'beside-north': besideNorth,
    'lean-in-height': leanInHeight,
    'pattern-match': patternMatch,
    'fits-the-lean': fitsTheLean,
  },
};
