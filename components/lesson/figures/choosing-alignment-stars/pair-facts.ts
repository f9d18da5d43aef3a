import { errorMap } from '@/lib/pointing/error-map';
import { pairWorth } from '@/lib/pointing/pair-worth';
import { wrap180 } from '@/lib/units/angle';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import type { FigureKit } from '../figure-data';
import type { SkyPosition } from '../sky-disc';

/** What of a telescope a pair's worth hangs on. */
export type PointingKit = Pick<FigureKit, 'telescope' | 'fieldRadiusArcmin'>;

export type PairFacts = {
  separationDeg: number;
  azimuthGapDeg: number;
  /** null: undetermined. */
  expectedErrorArcmin: number | null;
  /** Of 100 targets. */
  hits: number;
  /** Directions over the band of targets, and whether one is more likely in the eyepiece than not. */
  targets: readonly (SkyPosition & { likely: boolean })[];
  advice: string;
};

/** The band that targets are taken from, as everywhere in the product. */
const lowestTargetDeg = 20;
const highestTargetDeg = 80;

/** What aligning on these two directions is worth with this telescope; all from the engine. */
export function pairFacts(kit: PointingKit, stars: readonly [SkyPosition, SkyPosition]): PairFacts {
  const worth = pairWorth(kit.telescope, kit.fieldRadiusArcmin, stars[0], stars[1]);
  const apart = separationDeg(
    directionFromAzAlt(stars[0].azimuthDeg, stars[0].altitudeDeg),
    directionFromAzAlt(stars[1].azimuthDeg, stars[1].altitudeDeg),
  );
  const gap = Math.abs(wrap180(stars[0].azimuthDeg - stars[1].azimuthDeg));
  const determined = worth.expectedErrorArcmin !== null;
  return {
    separationDeg: apart,
    azimuthGapDeg: gap,
    expectedErrorArcmin: worth.expectedErrorArcmin,
    hits: 100 * worth.hitRate,
    targets: targetsOf(kit, stars, determined),
    advice: advise(stars, apart, gap, determined ? worth.hitRate : 0),
  };
}

function targetsOf(
  kit: PointingKit,
  stars: readonly [SkyPosition, SkyPosition],
  determined: boolean,
): PairFacts['targets'] {
  const radius2 = kit.fieldRadiusArcmin ** 2;
  // An undetermined pair has no map of its own: any other pair gives the same directions.
  const cells = determined
    ? errorMap({ stars, telescope: kit.telescope, stepDeg: 10 })
    : errorMap({ stars: anyGoodPair, telescope: kit.telescope, stepDeg: 10 });
  return cells
    .filter((cell) => cell.altitudeDeg > lowestTargetDeg && cell.altitudeDeg < highestTargetDeg)
    .map(({ azimuthDeg, altitudeDeg, errorArcmin }) => ({
      azimuthDeg,
      altitudeDeg,
      likely: determined && 1 - Math.exp(-radius2 / errorArcmin ** 2) >= 0.5,
    }));
}

const anyGoodPair: readonly [SkyPosition, SkyPosition] = [
  { azimuthDeg: 90, altitudeDeg: 40 },
  { azimuthDeg: 210, altitudeDeg: 40 },
];

function advise(
  stars: readonly [SkyPosition, SkyPosition],
  apart: number,
  gap: number,
  hitRate: number,
): string {
  const altitudes = stars.map((star) => star.altitudeDeg);
  if (Math.min(...altitudes) < 20) return 'One star is below two fists: the air dims and lifts it.';
  if (Math.max(...altitudes) > 70) return 'One star is above seven fists: azimuth swings up there.';
  if (apart < 20) return 'Too close together: small slips grow over the rest of the sky.';
  if (gap < 15) return 'One above the other: the mount cannot tell where level is.';
  if (hitRate >= 0.9) return 'A good pair.';
  return 'Usable, but look for a partner farther away and in another direction.';
}
