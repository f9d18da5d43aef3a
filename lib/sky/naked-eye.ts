import { degreesToRadians } from '../units/angle';

/** Magnitudes that twilight takes from the limit, by the Sun's true altitude in degrees. */
const twilightLoss: readonly (readonly [altitudeDeg: number, magnitudes: number])[] = [
  [-18, 0],
  [-12, 0.8],
  [-9, 2],
  [-6, 4],
  [-3, 6.5],
  [0, 9],
];

/** Magnitudes lost to twilight: straight lines between the points above, level beyond them. */
export function twilightLossMagnitudes(sunAltitudeDeg: number): number {
  let [fromDeg, fromLoss] = [-90, 0];
  for (const [altitudeDeg, loss] of twilightLoss) {
    if (sunAltitudeDeg < altitudeDeg) {
      const share = (sunAltitudeDeg - fromDeg) / (altitudeDeg - fromDeg);
      return fromLoss + share * (loss - fromLoss);
    }
    [fromDeg, fromLoss] = [altitudeDeg, loss];
  }
  return fromLoss;
}

/** Magnitudes lost to moonlight: 2.0 k² √(sin h) while the Moon is up. */
export function moonlightLossMagnitudes(altitudeDeg: number, illuminatedFraction: number): number {
  if (altitudeDeg <= 0) return 0;
  return 2 * illuminatedFraction ** 2 * Math.sqrt(Math.sin(degreesToRadians(altitudeDeg)));
}

/**
 * V of the faintest star that the naked eye sees at the zenith. Sun and Moon by their true altitude
 * in degrees. Our own approximation, without a source: say so where it is shown.
 */
export function nakedEyeLimit(sky: {
  darkestLimitMagnitude: number;
  sunAltitudeDeg: number;
  moonAltitudeDeg: number;
  moonIlluminatedFraction: number;
}): number {
  return (
    sky.darkestLimitMagnitude -
    twilightLossMagnitudes(sky.sunAltitudeDeg) -
    moonlightLossMagnitudes(sky.moonAltitudeDeg, sky.moonIlluminatedFraction)
  );
}
