import { standBuild, type LoadedStand } from '../assembly/stability';
import type { Random } from '../variants/random';

/** One of our stands, set up somehow; feet A, B and C in this order, clockwise from above. */
export const plainStand: LoadedStand = {
  legLengthMm: 1000,
  splayDeg: 24,
  footBearingsDeg: [0, 120, 240],
  tubeMassKg: 2,
  armBearingDeg: 0,
  mountMassKg: standBuild.mountMassKg,
  hungMassKg: 0,
  groundSlopeDeg: 0,
  fallsTowardsDeg: 0,
};
export const footNames = ['A', 'B', 'C'] as const;
export const footName = (index: number): string => footNames[index] ?? 'A';
export const lineName = ([one, other]: readonly [number, number]): string =>
  [footName(one), footName(other)].sort().join('–');

export function someStand(random: Random): LoadedStand {
  return {
    ...plainStand,
    legLengthMm: 50 * random.integer(15, 23),
    splayDeg: random.integer(13, 26),
    tubeMassKg: random.integer(15, 45) / 10,
    armBearingDeg: 5 * random.integer(0, 71),
  };
}
