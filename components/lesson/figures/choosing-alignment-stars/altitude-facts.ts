import { airmass, seenAsMagnitude } from '@/lib/sky/extinction';
import { apparentToTrueRefractionDeg } from '@/lib/sky/refraction';
import { degreesToRadians } from '@/lib/units/angle';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';

export type AltitudeFacts = {
  /** Arcminutes by which refraction lifts the star. */
  raisedArcmin: number;
  /** Times the air at the zenith. */
  airMass: number;
  /** Magnitudes lost beyond what the zenith takes. */
  dimmedMagnitudes: number;
  /** What is left of the light, per cent of what the same star gives at the zenith. */
  lightPercent: number;
  /** Azimuth that the star sweeps in ten minutes where it stands highest, degrees. */
  swingIn10MinDeg: number;
  /** How far the tube moves on the sky when it turns by 10° of azimuth, degrees. */
  widthOf10Deg: number;
  verdict: 'too-low' | 'good' | 'too-high';
};

/** Default extinction of the product, magnitudes an air mass. */
const extinction = 0.25;

/** The sky turns 15.041° an hour. */
const skyTurnDegPerHour = 15.041;

/**
 * How fast a star's azimuth changes while it crosses the meridian on the equator's side, degrees an
 * hour: 15.041° (sin φ + cos φ tan a), from dA/dt = ω (sin φ − cos φ cos A tan a). The same on both
 * sides of the equator.
 */
export function azimuthRateDegPerHour(latitudeDeg: number, altitudeDeg: number): number {
  const latitude = degreesToRadians(Math.abs(latitudeDeg));
  const altitude = degreesToRadians(altitudeDeg);
  return skyTurnDegPerHour * (Math.sin(latitude) + Math.cos(latitude) * Math.tan(altitude));
}

/** What a star's altitude (refracted, degrees) does to light and to the mount. */
export function altitudeFacts(altitudeDeg: number, latitudeDeg: number): AltitudeFacts {
  const dimmedMagnitudes = seenAsMagnitude(0, extinction, altitudeDeg);
  return {
    raisedArcmin: 60 * apparentToTrueRefractionDeg(altitudeDeg),
    airMass: airmass(altitudeDeg),
    dimmedMagnitudes,
    // Pogson's scale: five magnitudes are a factor of a hundred.
    lightPercent: 100 * 100 ** (-dimmedMagnitudes / 5),
    swingIn10MinDeg: azimuthRateDegPerHour(latitudeDeg, altitudeDeg) / 6,
    widthOf10Deg: separationDeg(
      directionFromAzAlt(0, altitudeDeg),
      directionFromAzAlt(10, altitudeDeg),
    ),
    verdict: altitudeDeg < 20 ? 'too-low' : altitudeDeg > 70 ? 'too-high' : 'good',
  };
}
