import { offsetText } from '@/components/lab/clock-and-place/clock-words';
import { handPosition, nearlyZenithFists } from '@/components/sky/position-words';
import type { EnteredSettings } from '@/lib/clock/entered-settings';
import type { ImageOrientation } from '@/lib/optics/image-orientation';

/** "4½", "½", "3" of whole and half fists. */
export function fistsInFigures(halfFists: number): string {
  const size = Math.abs(halfFists);
  const whole = Math.floor(size);
  return `${whole === 0 && size > 0 ? '' : String(whole)}${size === whole ? '' : '½'}`;
}

/**
 * Where a star stands, short enough to be read by a red lamp: "4½ fists up, 2 right of south-east"; to
 * half a fist, as an eye judges it.
 */
export function cardDirection(star: { azimuthDeg: number; altitudeDeg: number }): string {
  const { fistsUp, fistsRight, signpost } = handPosition(star.azimuthDeg, star.altitudeDeg);
  if (fistsUp >= nearlyZenithFists) return 'almost straight up';
  const up = `${fistsInFigures(fistsUp)} ${fistsUp <= 1 ? 'fist' : 'fists'} up`;
  if (fistsRight === 0) return `${up}, due ${signpost.word}`;
  const side = fistsRight > 0 ? 'right' : 'left';
  return `${up}, ${fistsInFigures(fistsRight)} ${side} of ${signpost.word}`;
}

/** What is entered into the mount, a line each; the time is read off a watch when it is entered. */
export function settingsInWords(
  entered: EnteredSettings,
): readonly [name: string, value: string][] {
  return [
    ['Date', dateInWords(entered.localTime.slice(0, 10))],
    ['Zone', offsetText(entered.zoneOffsetMinutes)],
    ['Summer time', entered.summerTime ? 'yes' : 'no'],
    ['Latitude', degreesAndMinutes(entered.latitudeDeg, 'N', 'S')],
    ['Longitude', degreesAndMinutes(entered.longitudeDeg, 'E', 'W')],
  ];
}

const dateInWords = (localDate: string): string =>
  new Intl.DateTimeFormat('en-GB', {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(`${localDate}T12:00:00Z`));

/** "54° 36′ N", to the nearest minute of arc. */
function degreesAndMinutes(angleDeg: number, positive: string, negative: string): string {
  const minutes = Math.round(Math.abs(angleDeg) * 60);
  const side = angleDeg < 0 ? negative : positive;
  return `${String(Math.floor(minutes / 60))}° ${String(minutes % 60)}′ ${side}`;
}

/** "2.5°", "27′": the width of a field. */
export const fieldInWords = (arcmin: number): string =>
  arcmin >= 60 ? `${(arcmin / 60).toFixed(1)}°` : `${arcmin.toFixed(0)}′`;

export const orientationInWords: Readonly<Record<ImageOrientation, string>> = {
  true: 'The picture is the right way round.',
  mirrored: 'The picture is upright, left and right exchanged.',
  turned: 'The picture is upside down.',
};

/** How the needle stands to true north; null where it hardly matters for a start set by hand. */
export function needleInWords(declinationDeg: number | null): string | null {
  if (declinationDeg === null || Math.abs(declinationDeg) < 0.5) return null;
  const side = declinationDeg > 0 ? 'east' : 'west';
  return `The needle points ${Math.abs(declinationDeg).toFixed(0)}° ${side} of it here.`;
}
