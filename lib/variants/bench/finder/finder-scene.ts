import { leastSunDistanceDeg, nearestToSunDeg, type AzAlt } from '../../../finder/way-past-sun';
import { wrap180, wrap360 } from '../../../units/angle';
import { directionFromAzAlt, separationDeg } from '../../../units/vector';
import type { Random } from '../../random';
import type { DayTarget, DayTargetKind } from './finder-variant';

/** Whether a thing of the scene stands clear of the Sun's 30° or well inside them. */
export type Wish = { kind: DayTargetKind; where: 'clear' | 'by-sun'; distanceM?: number };

/** Half the width of the scene in which things are put, degrees of azimuth. */
export const drawnHalfWidthDeg = 108;
/** Nothing lies near the limit: whether it is inside is to be seen by eye. */
const clearDeg = nearestToSunDeg + 7;
const bySunDeg = { least: 7, most: nearestToSunDeg - 5.5 };
/** Between two things, degrees of azimuth, so that their names have room. */
const apartDeg = 11;
const drawsForAThing = 250;

type Sort = {
  name: string;
  nearestM: number;
  farthestM: number;
  lowestDeg: number;
  highestDeg: number;
};

/** Heights as such things show over a school field; from memory, no source. */
const sorts: Readonly<Record<DayTargetKind, Sort>> = {
  'fence-post': {
    name: 'the fence post',
    nearestM: 6.5,
    farthestM: 10,
    lowestDeg: -3,
    highestDeg: -1,
  },
  'tree-trunk': {
    name: 'the tree trunk',
    nearestM: 18,
    farthestM: 24,
    lowestDeg: 2,
    highestDeg: 5,
  },
  chimney: {
    name: 'the chimney',
    nearestM: 50,
    farthestM: 70,
    lowestDeg: 5,
    highestDeg: 8,
  },
  mast: { name: 'the mast', nearestM: 260, farthestM: 420, lowestDeg: 4, highestDeg: 6 },
  spire: {
    name: 'the church spire',
    nearestM: 550,
    farthestM: 900,
    lowestDeg: 3,
    highestDeg: 5,
  },
  'hill-tower': {
    name: 'the tower on the hill',
    nearestM: 1800,
    farthestM: 3200,
    lowestDeg: 2,
    highestDeg: 4,
  },
};

/** As somebody would tell a distance that was paced out or read off a map. */
export function toldDistanceM(distanceM: number): number {
  const step = distanceM < 12 ? 0.5 : distanceM < 100 ? 1 : distanceM < 1000 ? 10 : 100;
  return Math.round(distanceM / step) * step;
}

/** Puts things into the scene as wished; null where there is no room for one of them. */
export function drawTargets(
  random: Random,
  wishes: readonly Wish[],
  sun: AzAlt,
  middleAzimuthDeg: number,
): DayTarget[] | null {
  const sunwards = directionFromAzAlt(sun.azimuthDeg, sun.altitudeDeg);
  const placed: DayTarget[] = [];
  // Those by the Sun have little room: they come first.
  const order = [...wishes].sort((one, other) => one.where.localeCompare(other.where));
  for (const { kind, where, distanceM } of order) {
    const { name, nearestM, farthestM, lowestDeg, highestDeg } = sorts[kind];
    const told = distanceM ?? toldDistanceM(random.between(nearestM, farthestM));
    let found: DayTarget | null = null;
    for (let draw = 0; draw < drawsForAThing && found === null; draw += 1) {
      const azimuthDeg = wrap360(
        middleAzimuthDeg + random.between(-drawnHalfWidthDeg, drawnHalfWidthDeg),
      );
      const altitudeDeg = random.between(lowestDeg, highestDeg);
      const fromSun = separationDeg(directionFromAzAlt(azimuthDeg, altitudeDeg), sunwards);
      const fits =
        where === 'clear'
          ? fromSun >= clearDeg
          : fromSun >= bySunDeg.least && fromSun <= bySunDeg.most;
      const crowded = placed.some(
        (one) => Math.abs(wrap180(one.azimuthDeg - azimuthDeg)) < apartDeg,
      );
      if (fits && !crowded)
        found = { id: kind, kind, name, azimuthDeg, altitudeDeg, distanceM: told };
    }
    if (found === null) return null;
    placed.push(found);
  }
  return placed;
}

/**
 * Where the capped tube points at first: clear of the Sun, and, where the scene allows it, so that the
 * straight way to a good target would lead past the Sun.
 */
export function drawTubeBefore(
  random: Random,
  sun: AzAlt | null,
  towards: AzAlt | null,
  middleAzimuthDeg: number,
): AzAlt {
  const draw = (): AzAlt => ({
    azimuthDeg: wrap360(middleAzimuthDeg + random.between(-drawnHalfWidthDeg, drawnHalfWidthDeg)),
    altitudeDeg: random.between(2, 24),
  });
  if (sun === null) return draw();
  let clear: AzAlt | null = null;
  for (let tries = 0; tries < drawsForAThing; tries += 1) {
    const tube = draw();
    if (leastSunDistanceDeg(tube, tube, sun) < clearDeg) continue;
    if (towards === null) return tube;
    clear ??= tube;
    const acrossScene =
      Math.abs(wrap180(tube.azimuthDeg - towards.azimuthDeg)) < 2 * drawnHalfWidthDeg - 40;
    if (acrossScene && leastSunDistanceDeg(tube, towards, sun) < nearestToSunDeg - 8) return tube;
  }
  return clear ?? { azimuthDeg: wrap360(sun.azimuthDeg + 180), altitudeDeg: 5 };
}
