import { wrap180, wrap360 } from '@/lib/units/angle';

/** The eight directions that have a signpost. */
export const signpostDirections = [
  { azimuthDeg: 0, word: 'north', sign: 'N' },
  { azimuthDeg: 45, word: 'north-east', sign: 'NE' },
  { azimuthDeg: 90, word: 'east', sign: 'E' },
  { azimuthDeg: 135, word: 'south-east', sign: 'SE' },
  { azimuthDeg: 180, word: 'south', sign: 'S' },
  { azimuthDeg: 225, word: 'south-west', sign: 'SW' },
  { azimuthDeg: 270, word: 'west', sign: 'W' },
  { azimuthDeg: 315, word: 'north-west', sign: 'NW' },
] as const;
export type SignpostDirection = (typeof signpostDirections)[number];

/** The signpost nearest to an azimuth. */
export function nearestSignpost(azimuthDeg: number): SignpostDirection {
  const eighth = Math.round(wrap360(azimuthDeg) / 45) % 8;
  return signpostDirections[eighth] ?? signpostDirections[0];
}

/** How far along the horizon an azimuth lies from a signpost: positive to the right (clockwise). */
export const rightOfSignpostDeg = (azimuthDeg: number, signpost: SignpostDirection): number =>
  wrap180(azimuthDeg - signpost.azimuthDeg);
