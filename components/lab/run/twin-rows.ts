import { fieldPlaceInWords } from '@/components/sky/clock-direction';
import { nearestSignpost, rightOfSignpostDeg } from '@/components/sky/directions';
import { fistsInWords, toHalfFists } from '@/components/sky/position-words';
import type { SkyLight } from '@/components/sky/sky-lights';
import type { SkyObjectId } from '@/lib/pointing/answer-key';
import { cross, directionFromAzAlt, dot, separationDeg, type Vector3 } from '@/lib/units/vector';
import { letterOf } from '../pair/light-labels';
import type { FieldLight } from './run-sky-lists';

/** What the eye takes in about the dot without turning the head: three fists to each side. */
const nearDeg = 30;

export type EyeRow = {
  light: SkyLight;
  /** Half fists to the right of the dot and above it; null beyond what is near. */
  beside: { fistsRight: number; fistsUp: number } | null;
};

/** Near the dot, the nearest first; or towards a signpost, in order of direction. */
export function eyeRows(
  lights: readonly SkyLight[],
  towards: Vector3,
  where: string,
  faintest: number,
): EyeRow[] {
  const rows = lights
    .filter(({ seenAs }) => seenAs <= faintest)
    .map((light) => {
      const direction = directionFromAzAlt(light.azimuthDeg, light.altitudeDeg);
      const away = separationDeg(direction, towards);
      return {
        light,
        away,
        beside: away <= nearDeg ? fistsBeside(towards, direction, away) : null,
      };
    });
  return where === 'near'
    ? rows.filter(({ beside }) => beside !== null).sort((a, b) => a.away - b.away)
    : rows
        .filter(({ light }) => nearestSignpost(light.azimuthDeg).word === where)
        .sort((a, b) => rightOfOwnSignpost(a.light) - rightOfOwnSignpost(b.light));
}

const rightOfOwnSignpost = ({ azimuthDeg }: SkyLight): number =>
  rightOfSignpostDeg(azimuthDeg, nearestSignpost(azimuthDeg));

/** As measured with fists from the dot, the horizon level: how far, times which way. */
function fistsBeside(
  from: Vector3,
  direction: Vector3,
  awayDeg: number,
): { fistsRight: number; fistsUp: number } {
  const zenith: Vector3 = [0, 0, 1];
  const right = dot(cross(from, zenith), direction);
  const up = dot(cross(cross(from, zenith), from), direction);
  const size = Math.hypot(right, up);
  if (size === 0) return { fistsRight: 0, fistsUp: 0 };
  return {
    fistsRight: toHalfFists((awayDeg * right) / size),
    fistsUp: toHalfFists((awayDeg * up) / size),
  };
}

/** "on the dot, as far as an eye can tell"; "one and a half fists right, half a fist down" */
export function besideInFists({ fistsRight, fistsUp }: NonNullable<EyeRow['beside']>): string {
  const parts = [
    ...(fistsRight === 0
      ? []
      : [`${fistsInWords(fistsRight)} ${fistsRight > 0 ? 'right' : 'left'}`]),
    ...(fistsUp === 0 ? [] : [`${fistsInWords(fistsUp)} ${fistsUp > 0 ? 'up' : 'down'}`]),
  ];
  return parts.length === 0 ? 'at the dot' : parts.join(', ');
}

/** So near the dot, arcminutes along either axis, the eye compares with the dot's own size. */
const closeToDotArcmin = 52.5;

/**
 * "on the dot"; "1.5° right, 0.5° down"; "15′ left". As a finder's window is judged: to half a degree,
 * and close to the dot to a quarter. With the half alone a star on the dot could be outside the smallest
 * eyepiece field of ours, and the table would ask for luck where the picture asks for none.
 */
export function finderPlaceInWords({ rightArcmin, upArcmin }: FieldLight): string {
  const close = Math.max(Math.abs(rightArcmin), Math.abs(upArcmin)) < closeToDotArcmin;
  const judgedArcmin = close ? 15 : 30;
  const right = Math.round(rightArcmin / judgedArcmin) * judgedArcmin;
  const up = Math.round(upArcmin / judgedArcmin) * judgedArcmin;
  const size = (arcmin: number): string =>
    close ? `${String(Math.abs(arcmin))}′` : `${String(Math.abs(arcmin) / 60)}°`;
  const parts = [
    ...(right === 0 ? [] : [`${size(right)} ${right > 0 ? 'right' : 'left'}`]),
    ...(up === 0 ? [] : [`${size(up)} ${up > 0 ? 'up' : 'down'}`]),
  ];
  return parts.length === 0 ? 'on the dot' : parts.join(', ');
}

/** How bright a star looks beside others in an eyepiece, which makes all of them brighter. */
export function eyepieceBrightness(seenAs: number): string {
  if (seenAs < 1) return 'dazzling';
  if (seenAs < 3) return 'very bright';
  if (seenAs < 5) return 'bright';
  if (seenAs < 7) return 'medium bright';
  return 'faint';
}

export const twinklingInWords = ({ twinkles }: { twinkles: boolean }): string =>
  twinkles ? 'twinkles' : 'shines steadily';

/** "A towards 4 o’clock, 3 tenths of the way out", of the brightest; what is seen after a move. */
export function seenAfterMove(
  eyepiece: readonly FieldLight[],
  finder: readonly FieldLight[],
  letters: Letters,
  radiusArcmin: number,
): string {
  const [inEyepiece] = eyepiece;
  const [inFinder] = finder;
  if (inEyepiece !== undefined)
    return `Brightest in the eyepiece: ${letters.of(inEyepiece.id)}, ${fieldPlaceInWords(inEyepiece, radiusArcmin)}.`;
  if (inFinder !== undefined)
    return `The eyepiece shows no bright star. Brightest in the finder: ${letters.of(inFinder.id)}, ${finderPlaceInWords(inFinder)}.`;
  return 'Neither the eyepiece nor the finder shows a bright star.';
}

/**
 * The letters of a run's lights: each gets the next one when it first comes into a table, and keeps it
 * in every table, so that it tells nothing about what it is.
 */
export class Letters {
  private readonly given = new Map<SkyObjectId, string>();

  of(id: SkyObjectId): string {
    const known = this.given.get(id);
    if (known !== undefined) return known;
    const letter = letterOf(this.given.size);
    this.given.set(id, letter);
    return letter;
  }
}

export const byBrightness = (lights: readonly FieldLight[]): FieldLight[] =>
  [...lights].sort((a, b) => a.seenAs - b.seenAs);
