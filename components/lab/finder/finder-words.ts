import { capitalised } from '@/lib/wording/capital';
import { angleInWords } from '@/components/sky/angle-words';
import { fieldPlaceInWords } from '@/components/sky/clock-direction';
import { nearestSignpost } from '@/components/sky/directions';
import type { Companion, DayHazard, StandingPlace } from '@/lib/finder/day-hazard';
import type { SettingState } from '@/lib/finder/setting';
import { leastSunDistanceDeg, nearestToSunDeg, type AzAlt } from '@/lib/finder/way-past-sun';
import type { NamedAim } from '@/lib/grading/bench/finder/finder-replay';
import type { FieldOffset } from '@/lib/optics/image-orientation';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { chosenAim, fromDot, inEyepiece } from './finder-work';

export const companionNames: Readonly<Record<Companion, string>> = {
  nobody: 'Nobody; I am alone',
  classmate: 'A classmate',
  adult: 'An adult, who stays',
};

export const standNames: Readonly<Record<StandingPlace, string>> = {
  'open-ground': 'On the open grass, in the sunshine',
  'under-a-tree': 'Under a tree, in broken shade',
  'building-shadow': 'In the shadow of a building that hides the Sun',
};

export const screwNames = ['Side screw', 'Rear screw'] as const;

export const metresInWords = (distanceM: number): string =>
  distanceM >= 1000 ? `${String(distanceM / 1000)} km` : `${String(distanceM)} m`;

/** "the mast, 300 m away"; a light of the sky by its name alone. */
export const aimInWords = ({ name, distanceM }: Pick<NamedAim, 'name' | 'distanceM'>): string =>
  distanceM === null ? name : `${name}, ${metresInWords(distanceM)} away`;

/** To 5°, as an eye with a fist would judge it. */
const to5 = (deg: number): number => Math.round(deg / 5) * 5;

/** "in the south-west (225°), about 15° up" */
export function placeInWords({ azimuthDeg, altitudeDeg }: AzAlt): string {
  const up = to5(altitudeDeg);
  const height =
    up === 0 ? 'about level' : `about ${String(Math.abs(up))}° ${up > 0 ? 'up' : 'down'}`;
  return `in the ${nearestSignpost(azimuthDeg).word} (${String(to5(azimuthDeg) % 360)}°), ${height}`;
}

/** How far from the Sun something stands, and what that means. Empty once the Sun is down. */
export function fromSunInWords({ day }: FinderVariant, { dusk }: SettingState, at: AzAlt): string {
  if (day === null || dusk) return '';
  const deg = leastSunDistanceDeg(at, at, day.sun);
  return `about ${String(to5(deg))}° from the Sun, ${deg < nearestToSunDeg ? 'inside' : 'outside'} the 30°`;
}

/** How near the straight way from where the tube points leads past the Sun. Empty once it is down. */
export function wayInWords(
  { day }: FinderVariant,
  { dusk, tube }: SettingState,
  to: AzAlt,
): string {
  if (day === null || dusk) return '';
  const deg = leastSunDistanceDeg(tube, to, day.sun);
  return `the straight way there passes about ${String(to5(deg))}° from it`;
}

/** What the eyepiece shows: each thing in it, or why there is none. */
export function eyepieceInWords(
  variant: FinderVariant,
  state: SettingState,
  aims: readonly NamedAim[],
): string {
  if (state.capsOn) return 'The cap is on: nothing but black.';
  const { radiusArcmin } = variant.eyepieces[state.eyepiece];
  const seen = aims.flatMap((aim) => {
    const place = inEyepiece(variant, state, aim);
    return place === null
      ? []
      : [`${capitalised(aim.name)} is ${fieldPlaceInWords(place, radiusArcmin)}.`];
  });
  return seen.length === 0 ? 'Nothing to set on is in the eyepiece.' : seen.join(' ');
}

/** Even fine work with a red dot is no finer than this: it covers about so much. Arcminutes. */
const dotStep = 2;
const toDotStep = (arcmin: number): number => Math.round(arcmin / dotStep) * dotStep;

/** "12′ to the left of the dot and 4′ above it" */
function besideDotInWords({ rightArcmin, upArcmin }: FieldOffset): string {
  const right = toDotStep(rightArcmin);
  const up = toDotStep(upArcmin);
  if (right === 0 && up === 0) return 'right under the dot';
  const across =
    right === 0
      ? ''
      : `${String(Math.abs(right))}′ to the ${right > 0 ? 'right' : 'left'} of the dot`;
  const upward =
    up === 0
      ? ''
      : `${String(Math.abs(up))}′ ${up > 0 ? 'above' : 'below'} ${right === 0 ? 'the dot' : 'it'}`;
  return [across, upward].filter((part) => part !== '').join(' and ');
}

/** Where the chosen target stands beside the red dot. */
export function finderInWords(variant: FinderVariant, state: SettingState): string {
  if (state.capsOn) return 'The finder is capped too.';
  const aim = chosenAim(variant, state);
  if (aim === null) return 'Choose what to set it on first.';
  const beside = fromDot(variant, state, aim);
  const name = capitalised(aim.name);
  return beside === null
    ? `${name} is not in the finder’s window.`
    : `${name} is ${besideDotInWords(beside)}.`;
}

/** "2¼ turns to the right" would be read out badly: plain decimals. */
export const turnsInWords = (turns: number): string =>
  turns === 0
    ? 'as it was found'
    : `${String(Math.abs(Math.round(turns * 100) / 100))} ${Math.abs(turns) === 1 ? 'turn' : 'turns'} to the ${turns > 0 ? 'right' : 'left'}`;

/** "25 mm" */
export const eyepieceName = (variant: FinderVariant, which: 'low' | 'high'): string =>
  `${String(variant.eyepieces[which].focalLengthMm)} mm`;

/** What one should know at once about what was just done; for practice. */
export function hazardInWords(hazard: DayHazard): { title: string; text: string } {
  switch (hazard.id) {
    case 'near-sun':
      return {
        title:
          hazard.how === 'opened-there'
            ? 'the caps came off too near to the Sun'
            : 'the open tube came too near to the Sun',
        text: `It was ${hazard.distanceDeg.toFixed(0)}° from the Sun, and 30° is the least. With the Sun in a telescope or finder, an eye is blind before it can turn away, and a finder or eyepiece melts. Caps on before the tube turns; by day, take a target that is well clear.`,
      };
    case 'no-adult':
      return {
        title: 'no adult stood beside the open telescope by day',
        text: 'By day a finder is set by an adult or with one beside you all the time, who watches that nobody looks or turns the tube towards the Sun.',
      };
    case 'not-in-shadow':
      return {
        title: 'the open telescope stood in the sunshine',
        text: 'In the shadow of a building the Sun cannot come into view, whatever somebody bumps into. A tree lets it through.',
      };
    case 'left-open':
      return {
        title: 'the telescope was left open by day',
        text: 'The Sun wanders into an open tube by itself, and somebody will look. Tube and finder stay capped until it has set.',
      };
  }
}

/** "16:40" of a local time such as "2026-12-05T16:40". */
export const clockTime = (localTime: string): string => localTime.slice(11, 16);

/** Where the finder sits on the tube, for whoever stands behind it. */
export function finderPlaceInWords({ finder }: FinderVariant): string {
  const size = Math.round(Math.hypot(finder.rightMm, finder.upMm));
  const across = finder.rightMm > 0 ? 'right' : 'left';
  const hour =
    ((Math.round((Math.atan2(finder.rightMm, finder.upMm) * 6) / Math.PI) + 11) % 12) + 1;
  return `Seen from behind, the finder sits to the upper ${across} of the tube, towards ${String(hour)} o’clock, ${String(size)} mm from axis to axis.`;
}

export const fieldInWords = (variant: FinderVariant, which: 'low' | 'high'): string =>
  `${eyepieceName(variant, which)} (shows ${angleInWords(2 * variant.eyepieces[which].radiusArcmin)} across)`;
