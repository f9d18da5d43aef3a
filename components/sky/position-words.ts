import type { SignpostDirection } from './directions';
import { nearestSignpost, rightOfSignpostDeg } from './directions';

/** What a fist at arm's length covers (common practice, no source). */
export const fistDeg = 10;

/** Rounded as an eye with a fist would judge it: to half a fist. */
export const toHalfFists = (angleDeg: number): number => Math.round(angleDeg / (fistDeg / 2)) / 2;

const numberWords = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** "half a fist", "one fist", "three and a half fists"; "less than half a fist" for none. */
export function fistsInWords(halfFists: number): string {
  const size = Math.abs(halfFists);
  if (size === 0) return 'less than half a fist';
  if (size === 0.5) return 'half a fist';
  const whole = Math.floor(size);
  const word = numberWords[whole] ?? String(whole);
  if (size !== whole) return `${word} and a half fists`;
  return whole === 1 ? 'one fist' : `${word} fists`;
}

export type HandPosition = {
  /** Halves of fists above the level horizon. */
  fistsUp: number;
  signpost: SignpostDirection;
  /** Halves of fists along the horizon; positive to the right of the signpost. */
  fistsRight: number;
};

/** A direction as hand and fist would tell it. */
export function handPosition(azimuthDeg: number, altitudeDeg: number): HandPosition {
  const signpost = nearestSignpost(azimuthDeg);
  return {
    fistsUp: toHalfFists(altitudeDeg),
    signpost,
    fistsRight: toHalfFists(rightOfSignpostDeg(azimuthDeg, signpost)),
  };
}

/** "two fists right of the south-east signpost" */
export function sidewaysInWords({ signpost, fistsRight }: HandPosition): string {
  if (fistsRight === 0) return `above the ${signpost.word} signpost`;
  const side = fistsRight > 0 ? 'right' : 'left';
  return `${fistsInWords(fistsRight)} ${side} of the ${signpost.word} signpost`;
}

/** From here on no direction along the horizon helps. */
export const nearlyZenithFists = 8.5;

/** "four fists up, two fists right of the south-east signpost" */
export function positionInWords(azimuthDeg: number, altitudeDeg: number): string {
  const position = handPosition(azimuthDeg, altitudeDeg);
  if (position.fistsUp >= nearlyZenithFists) return 'almost straight up';
  return `${fistsInWords(position.fistsUp)} up, ${sidewaysInWords(position)}`;
}

/** Rounded to 5°, with 360° read as 0°. */
export const roundedAzimuthDeg = (azimuthDeg: number): number =>
  (Math.round(azimuthDeg / 5) * 5) % 360;
export const roundedAltitudeDeg = (altitudeDeg: number): number => Math.round(altitudeDeg / 5) * 5;

/** Brightness to half a magnitude, as an eye would judge it. */
export const toHalfMagnitude = (seenAs: number): number => Math.round(seenAs * 2) / 2;

/** A plain word for how bright a light looks. */
export function brightnessInWords(seenAs: number): string {
  const rounded = toHalfMagnitude(seenAs);
  if (rounded <= -1.5) return 'brighter than any star';
  if (rounded <= 0.5) return 'very bright';
  if (rounded <= 1.5) return 'bright';
  if (rounded <= 2.5) return 'medium bright';
  if (rounded <= 3.5) return 'faint';
  return 'very faint';
}
