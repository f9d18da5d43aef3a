import { wrap180, wrap360 } from '../units/angle';

/**
 * Where a tube looks, from true north through east, that a compass has at a bearing: the needle points
 * east of true north by the declination (positive), and every bearing is counted from the needle.
 */
export const trueBearingDeg = (compassBearingDeg: number, declinationDeg: number): number =>
  wrap360(compassBearingDeg + declinationDeg);

/** What a compass shows along true north, [0°, 360°). */
export const compassBearingOfNorthDeg = (declinationDeg: number): number =>
  wrap360(-declinationDeg);

/** How far from true north a tube starts, east positive, [−180°, 180°). */
export const startErrorDeg = (compassBearingDeg: number, declinationDeg: number): number =>
  wrap180(trueBearingDeg(compassBearingDeg, declinationDeg));
