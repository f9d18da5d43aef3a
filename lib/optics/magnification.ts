import type { Eyepiece, Telescope } from '../pointing/scenario';

type FocalLength = Pick<Telescope, 'focalLengthMm'>;

/** How many times larger an eyepiece shows the sky: F/f, any first book of optics. */
export const magnification = (
  telescope: FocalLength,
  eyepiece: Pick<Eyepiece, 'focalLengthMm'>,
): number => telescope.focalLengthMm / eyepiece.focalLengthMm;

/** Width in millimetres of the bundle of light that enters the eye: aperture over magnification. */
export const exitPupilMm = (
  telescope: Pick<Telescope, 'focalLengthMm' | 'apertureMm'>,
  eyepiece: Pick<Eyepiece, 'focalLengthMm'>,
): number => telescope.apertureMm / magnification(telescope, eyepiece);

/** Beyond about twice the aperture in millimetres an image only grows dimmer. Common practice, no source. */
export const highestUsefulMagnification = ({ apertureMm }: Pick<Telescope, 'apertureMm'>): number =>
  2 * apertureMm;

/** How close two equal stars may stand and still show as two, arcseconds. Dawes 1867: 116/D in mm. */
export const dawesLimitArcsec = ({ apertureMm }: Pick<Telescope, 'apertureMm'>): number =>
  116 / apertureMm;
