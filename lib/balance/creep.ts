import { radiansToDegrees } from '../units/angle';
import { freeFallMPerS2, torqueNm, type ClampedTube } from './torque';

/** Where the mount ends: below, the tube meets the tripod; above, the arm. Our kits', invented. */
export const altitudeStopsDeg = { lowest: -10, highest: 95 } as const;

/** What a tube does when the hand leaves it. */
export type Creep = {
  /** Which end sinks. */
  moves: 'front' | 'back' | 'holds';
  /** Where it comes to rest, degrees. */
  restDeg: number;
  /** What its weight pulls with at the start; positive pulls the front down. */
  torqueNm: number;
};

/**
 * What the tube does at an altitude once nothing but the clutch holds it. It creeps when its weight
 * pulls harder than the clutch holds, and on until it no longer does, or to the stop. A greased clutch
 * lets it creep slowly, so it does not swing past that place; that is our simplification.
 */
export function creepFrom(tube: ClampedTube, altitudeDeg: number, holdingTorqueNm: number): Creep {
  const torque = torqueNm(tube, altitudeDeg);
  if (Math.abs(torque) <= holdingTorqueNm)
    return { moves: 'holds', restDeg: altitudeDeg, torqueNm: torque };
  // The torque is size · cos(a + lead); creeping downward it ends where that equals the holding torque.
  const sizeNm = (tube.massKg * freeFallMPerS2 * Math.hypot(tube.forwardMm, tube.aboveMm)) / 1000;
  const leadDeg = radiansToDegrees(Math.atan2(tube.aboveMm, tube.forwardMm));
  const way = torque > 0 ? 1 : -1;
  const halfDeg: number = radiansToDegrees(Math.acos((way * holdingTorqueNm) / sizeNm));
  const ends = [halfDeg, -halfDeg].flatMap((end) =>
    [-360, 0, 360].map((turn) => end - leadDeg + turn),
  );
  const { lowest, highest } = altitudeStopsDeg;
  return way > 0
    ? {
        moves: 'front',
        restDeg: Math.max(lowest, ...ends.filter((end) => end < altitudeDeg)),
        torqueNm: torque,
      }
    : {
        moves: 'back',
        restDeg: Math.min(highest, ...ends.filter((end) => end > altitudeDeg)),
        torqueNm: torque,
      };
}
