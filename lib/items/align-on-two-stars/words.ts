import { windOf } from '../../wording/compass-points';

/** "3.2" with a typographic minus; no ".0". */
export const figures = (value: number, decimals = 1): string =>
  String(Number(value.toFixed(decimals))).replace('-', '−');

/** "12′" */
export const arcmin = (value: number): string => `${figures(value, 0)}′`;
/** "3.2°" */
export const deg = (value: number): string => `${figures(value, 1)}°`;
/** "48′", and "1.6°" from one degree up. */
export const angleText = (valueArcmin: number): string =>
  Math.round(Math.abs(valueArcmin)) >= 60 ? deg(valueArcmin / 60) : arcmin(valueArcmin);

/** "in the south-east, 40° up" */
export const placeText = (place: { azimuthDeg: number; altitudeDeg: number }): string =>
  `in the ${windOf(place.azimuthDeg)}, ${figures(place.altitudeDeg, 0)}° up`;

/** "A", "B", … */
export const capital = (index: number): string => 'ABCDEFGH'.charAt(index);
