import type { Eyepiece, Telescope } from '../pointing/scenario';
import { dawesLimitArcsec, highestUsefulMagnification, magnification } from './magnification';
import { trueFieldArcmin } from './true-field';

type Optics = Pick<Telescope, 'focalLengthMm' | 'apertureMm'>;

/** How far apart two stars must seem in the eyepiece to be seen as two with ease. Common practice, no source. */
export const easilyTwoArcmin = 4;
/** A thing is seen whole with a little sky round it. Common practice, no source. */
export const roomRound = 1.1;

/** How far apart a pair seems in the eyepiece, arcminutes: its separation, magnified. */
export const apparentSeparationArcmin = (
  telescope: Optics,
  eyepiece: Eyepiece,
  separationArcsec: number,
): number => (separationArcsec / 60) * magnification(telescope, eyepiece);

/** Whether the eyepiece shows all of something that is so wide, with a little sky round it. */
export const showsWhole = (telescope: Optics, eyepiece: Eyepiece, sizeArcmin: number): boolean =>
  trueFieldArcmin(telescope, eyepiece) >= roomRound * sizeArcmin;

/** Whether a pair is seen as two: the aperture parts it, and the eyepiece magnifies enough, not too much. */
export const splits = (telescope: Optics, eyepiece: Eyepiece, separationArcsec: number): boolean =>
  separationArcsec >= dawesLimitArcsec(telescope) &&
  apparentSeparationArcmin(telescope, eyepiece, separationArcsec) >= easilyTwoArcmin &&
  magnification(telescope, eyepiece) <= highestUsefulMagnification(telescope);

/** The one of them that magnifies most; undefined of none. */
export const strongest = <E extends Eyepiece>(eyepieces: readonly E[]): E | undefined =>
  [...eyepieces].sort((a, b) => a.focalLengthMm - b.focalLengthMm)[0];
