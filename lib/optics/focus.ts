import type { Telescope } from '../pointing/scenario';

const arcminPerRadian = (180 * 60) / Math.PI;

/**
 * How wide a star's disc is on the sky, in arcminutes, with the eyepiece `defocusMm` away from where it
 * ought to be: the cone of light, F/D, is `defocusMm / (F/D)` wide there, seen from the focal length
 * away. Geometrical optics, any first book; diffraction (an arcsecond or two) is left out.
 */
export const blurArcmin = (
  { focalLengthMm, apertureMm }: Pick<Telescope, 'focalLengthMm' | 'apertureMm'>,
  defocusMm: number,
): number => ((Math.abs(defocusMm) * apertureMm) / focalLengthMm / focalLengthMm) * arcminPerRadian;
