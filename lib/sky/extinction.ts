import { degreesToRadians } from '../units/angle';

/**
 * Air mass along the line of sight in units of the zenith's, from the refracted altitude in degrees.
 * Below the horizon it is held at its value there (37.92).
 * Kasten & Young 1989, Applied Optics 28, 4735, eq. 3.
 */
export function airmass(altitudeDeg: number): number {
  const h = Math.max(altitudeDeg, 0);
  return 1 / (Math.sin(degreesToRadians(h)) + 0.50572 * (h + 6.07995) ** -1.6364);
}

/**
 * The V magnitude of the star that would look as bright at the zenith, through a sky that takes
 * `extinction` magnitudes an air mass. Compare it with the naked-eye limit at the zenith.
 */
export function seenAsMagnitude(v: number, extinction: number, altitudeDeg: number): number {
  return v + extinction * (airmass(altitudeDeg) - 1);
}
