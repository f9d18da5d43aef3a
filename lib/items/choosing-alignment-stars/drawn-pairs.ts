import { ratePair } from '../../pointing/rank-pairs';
import { wrap180 } from '../../units/angle';
import { whereabouts } from '../clock-and-place/words';
import type { ItemDraw } from '../item-family';
import type { MisconceptionId } from '../misconceptions';
import {
  apartDeg,
  clearOfLimits,
  drawEvening,
  whole,
  type DrawnEvening,
  type Light,
} from './drawn-evening';

/** Two lights of an evening, and what aligning on them is worth with its telescope. */
export type DrawnPair = {
  lights: readonly [Light, Light];
  separationDeg: number;
  azimuthGapDeg: number;
  /** Targets of 100 in the observing eyepiece, as far as the two may serve. */
  hits: number;
};

export function pairOf(evening: DrawnEvening, one: Light, other: Light): DrawnPair {
  const { telescope, fieldRadiusArcmin } = evening.kit;
  const star = (light: Light) => ({ ...light, hip: light.hip ?? 0 });
  const { hitRate } = ratePair(telescope, fieldRadiusArcmin, star(one), star(other));
  return {
    lights: [one, other],
    separationDeg: apartDeg(one, other),
    azimuthGapDeg: Math.abs(wrap180(one.azimuthDeg - other.azimuthDeg)),
    hits: Math.round(100 * hitRate),
  };
}

const known = new WeakMap<DrawnEvening, readonly DrawnPair[]>();

/** Every pair of the usable stars that no neighbour spoils. */
function pairsOf(evening: DrawnEvening): readonly DrawnPair[] {
  const before = known.get(evening);
  if (before !== undefined) return before;
  const serving = servingStars(evening);
  const made = serving.flatMap((one, i) =>
    serving.slice(i + 1).map((other) => pairOf(evening, one, other)),
  );
  known.set(evening, made);
  return made;
}

/** Usable, well inside the limits, and without a look-alike. */
export const servingStars = (evening: DrawnEvening): Light[] =>
  evening.lights.filter(
    (light) => light.usable && light.cautions.length === 0 && clearOfLimits(light),
  );

export const names = ({ lights }: DrawnPair): string => `${lights[0].name} and ${lights[1].name}`;

/** "Vega (west, 3 fists up) and Capella (east, 4 fists up)". */
export const pairInWords = ({ lights }: DrawnPair): string =>
  lights
    .map((light) => `${light.name} (${whereabouts(light).replace(/^in the /, '')})`)
    .join(' and ');

export const isTooClose = ({ separationDeg }: DrawnPair): boolean => separationDeg < 20;
export const isInLine = ({ separationDeg, azimuthGapDeg }: DrawnPair): boolean =>
  separationDeg >= 22 && azimuthGapDeg < 15;
/** As many targets as a pair is called good for. */
const goodHits = 90;
export const isGood = ({ hits, separationDeg }: DrawnPair): boolean =>
  hits >= goodHits && separationDeg > 45 && separationDeg < 130;

/** Why a pair is worth what it is worth. */
export function verdictOn(
  pair: DrawnPair,
  kitName: string,
): { reason: string; misconception?: MisconceptionId } {
  const worth = `With ${kitName}, ${pair.hits < 1 ? 'none' : String(pair.hits)} of 100 targets would be in the eyepiece.`;
  if (isTooClose(pair)) {
    return {
      reason: `They are ${whole(pair.separationDeg)}° apart, less than two fists, so small slips grow over the rest of the sky. ${worth}`,
      misconception: 'two-stars-too-close',
    };
  }
  if (isInLine(pair)) {
    return {
      reason: `They are ${whole(pair.separationDeg)}° apart, but one stands above the other: ${whole(pair.azimuthGapDeg)}° of azimuth between them. The mount is left in doubt where level is. ${worth}`,
      misconception: 'two-stars-in-line',
    };
  }
  return {
    reason: `They are ${whole(pair.separationDeg)}° apart, ${whole(pair.azimuthGapDeg)}° in azimuth. ${worth}`,
  };
}

/** An evening with good pairs and some that are too close or in line. */
export function eveningWithPairs(draw: ItemDraw): {
  evening: DrawnEvening;
  good: readonly DrawnPair[];
  close: readonly DrawnPair[];
  inLine: readonly DrawnPair[];
  all: readonly DrawnPair[];
} {
  for (;;) {
    const evening = drawEvening(draw);
    const all = pairsOf(evening);
    const good = all.filter(isGood);
    // Close, and not in line as well: it has one thing wrong with it, and shows it.
    const close = all.filter(
      (pair) => isTooClose(pair) && pair.azimuthGapDeg >= 15 && pair.hits < 60,
    );
    const inLine = all.filter((pair) => isInLine(pair) && pair.hits < 50);
    if (good.length >= 2 && close.length >= 1 && inLine.length >= 1)
      return { evening, good, close, inLine, all };
  }
}
