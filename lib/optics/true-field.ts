import { radiansToArcminutes } from '../units/angle';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import type { Eyepiece, Telescope } from '../pointing/scenario';

/** How much sky an eyepiece shows across, arcminutes: apparent field over magnification. */
export const trueFieldArcmin = (
  telescope: Pick<Telescope, 'focalLengthMm'>,
  eyepiece: Eyepiece,
): number => 2 * fieldRadiusArcmin(telescope, eyepiece);

/** The same from the width of the ring that bounds the field, where it is known: 2 atan(stop / 2F). */
export const trueFieldFromStopArcmin = (
  { focalLengthMm }: Pick<Telescope, 'focalLengthMm'>,
  fieldStopMm: number,
): number => radiansToArcminutes(2 * Math.atan(fieldStopMm / (2 * focalLengthMm)));
