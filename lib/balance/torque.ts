import { degreesToRadians } from '../units/angle';
import type { PlacedMass } from './centre-of-mass';

/** Standard acceleration of free fall, m/s²: 3rd CGPM, 1901. */
export const freeFallMPerS2 = 9.80665;

/**
 * A tube in its clamp, as the altitude axis feels it: how heavy it is, and where its centre of mass
 * lies: so far in front of the axis (negative: behind it) and above it while the tube is level.
 */
export type ClampedTube = { massKg: number; forwardMm: number; aboveMm: number };

/** The same once the clamp holds the tube at this place of the tape. */
export const clampedAt = (tube: PlacedMass, clampMm: number): ClampedTube => ({
  massKg: tube.massKg,
  forwardMm: clampMm - tube.alongMm,
  aboveMm: tube.aboveAxisMm,
});

/**
 * The torque of the tube's weight about the altitude axis, newton metres, at an altitude in degrees:
 * M g (forward cos a − above sin a). Positive: the front is pulled down. Design, "Balance".
 */
export function torqueNm({ massKg, forwardMm, aboveMm }: ClampedTube, altitudeDeg: number): number {
  const altitude = degreesToRadians(altitudeDeg);
  const armM = (forwardMm * Math.cos(altitude) - aboveMm * Math.sin(altitude)) / 1000;
  return massKg * freeFallMPerS2 * armM;
}
