import type { Eyepiece, Telescope } from './scenario';

/**
 * Radius of the true field in arcminutes: half the apparent field over the magnification F/f.
 * An eyepiece's field stop would give it slightly better, but labels carry the apparent field.
 */
export function fieldRadiusArcmin(
  telescope: Pick<Telescope, 'focalLengthMm'>,
  eyepiece: Eyepiece,
): number {
  const magnification = telescope.focalLengthMm / eyepiece.focalLengthMm;
  return (eyepiece.apparentFieldDeg / magnification / 2) * 60;
}
