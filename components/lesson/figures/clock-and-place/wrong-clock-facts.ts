import { leanDeg, seenAt, tubeSentTo } from '@/lib/clock/believed-place';
import { moonRunsDeg } from '@/lib/clock/split-by-cause';
import { fitRotation } from '@/lib/pointing/fit-rotation';
import { siderealDegPerSecond } from '@/lib/sky/turned-frame';
import { wrap180 } from '@/lib/units/angle';
import { transform } from '@/lib/units/matrix';
import { azAltFromDirection, separationDeg, type Vector3 } from '@/lib/units/vector';
import type { SkyPosition } from '../sky-disc';
import { starsAt } from './sky-of-a-moment';
import { startingLatitudeDeg, startingMs, type ToldWrong } from './starts';

export type SentStar = {
  name: string;
  seen: SkyPosition;
  /** Where the tube looks when it is sent there. */
  tube: SkyPosition;
  missDeg: number;
};

export type WrongClockFacts = {
  stars: readonly SentStar[];
  /** By how much the mount's sky is turned, the way of the stars positive. */
  turnDeg: number;
  /** As much as the mount takes its base to lean once it is aligned. */
  leanDeg: number;
  /** By how much the Moon is missed even then. */
  moonDeg: number;
};

const sky = { latitudeDeg: startingLatitudeDeg, refractionScale: 1 };

/** Bright, spread over the sky, and well up on the lesson's evening. */
const shown = [
  ...['Vega', 'Capella', 'Deneb', 'Aldebaran', 'Polaris', 'Hamal', 'Diphda'],
  ...['Elnath', 'Dubhe'],
];
export const alignedOn = ['Vega', 'Capella'] as const;

/** Where a level mount that was told wrongly sends its tube on the lesson's evening; all from the engine. */
export function wrongClockFacts(told: ToldWrong, aligned: boolean): WrongClockFacts {
  const believed = {
    turnDeg: wrap180(siderealDegPerSecond * 60 * told.clockMinutes + told.longitudeDeg),
    latitudeDeg: startingLatitudeDeg + told.latitudeDeg,
    startDeg: 0,
  };
  const sent = starsAt(startingMs, 0)
    .filter(({ name }) => shown.includes(name))
    .map((star) => ({
      name: star.name,
      seen: seenAt(star, sky),
      meant: tubeSentTo(star, believed, sky),
    }));
  // The alignment turns everything that is meant until the two stars stand where they are seen.
  const turn = aligned
    ? fitRotation(
        sent
          .filter(({ name }) => alignedOn.some((one) => one === name))
          .map(({ seen, meant }) => ({ from: meant, to: seen, weight: 1 })),
      )
    : null;
  return {
    turnDeg: believed.turnDeg,
    leanDeg: leanDeg(believed, sky),
    moonDeg: moonRunsDeg(Math.abs(told.clockMinutes) * 60_000),
    stars: sent.map(({ name, seen, meant }) => {
      const tube: Vector3 = turn === null ? meant : transform(turn, meant);
      return {
        name,
        seen: azAltFromDirection(seen),
        tube: azAltFromDirection(tube),
        missDeg: separationDeg(seen, tube),
      };
    }),
  };
}
