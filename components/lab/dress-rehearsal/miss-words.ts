import { capitalised } from '@/lib/wording/capital';
import { angleWordsFor } from '@/components/sky/angle-words';
import type { RehearsalMiss } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-result';
import type { Attribution, Share } from '@/lib/rehearsal/attribution';

type Cause = Share['cause'];
export type TracedMiss = Extract<Attribution, { ok: true }>;
type Untraced = Exclude<Attribution, { ok: true }>;

/** As a thing that comes after "from": "24′ came from the tube creeping in its clutch". */
export const causeWords: Readonly<Record<Cause, string>> = {
  tilt: 'a base off level',
  clock: 'a wrong clock, date or zone',
  place: 'a wrong place',
  'start-azimuth': 'a tube that did not face true north at the start',
  'start-altitude': 'a tube that was not level at the start',
  finder: 'a dot that lies beside what the tube shows',
  'first-centring': 'the first star left beside the middle',
  'second-centring': 'the second star left beside the middle',
  'final-approach': 'a last move that left play in the gears',
  'wrong-light': 'another light taken for the star',
  creep: 'the tube creeping in its clutch',
  clutch: 'a clutch that was not locked',
  kick: 'a foot against the tripod',
  supply: 'a computer that lost its voltage, and the alignment with it',
  making: 'how this telescope is made',
  counts: 'the coarse counting of the axes',
};

const kindWords: Readonly<Record<RehearsalMiss['kind'], (star: string) => string>> = {
  'first-slew': (star) => `First slew, to ${star}`,
  'first-view': (star) => `${star} under the dot, looked for in the eyepiece`,
  'second-slew': (star) => `Second slew, to ${star}`,
  third: (star) => `Check on ${star}`,
};

export const missTitle = ({ kind, name }: RehearsalMiss): string => kindWords[kind](name);

/** Below this a star stands in the middle as far as an eye can tell. */
const middleArcmin = 1;

/** How far off, whether it was in view, and what most of it came from. */
export function missInWords(
  { kind, fieldRadiusArcmin }: Pick<RehearsalMiss, 'kind' | 'fieldRadiusArcmin'>,
  { missArcmin, shares }: TracedMiss,
): string {
  if (missArcmin < middleArcmin)
    return kind === 'first-view'
      ? 'With the dot on the star, the star stood in the middle of the eyepiece.'
      : 'It came to rest with the star in the middle of the eyepiece.';
  const inView = missArcmin <= fieldRadiusArcmin;
  const where = angleWordsFor(missArcmin, fieldRadiusArcmin);
  const pointed =
    kind === 'first-view' ? 'With the dot on the star, the tube pointed' : 'It came to rest';
  const landed = `${pointed} ${where(missArcmin)} beside the star; the eyepiece shows ${where(fieldRadiusArcmin)} to each side, so the star was ${inView ? 'in view' : 'out of view'}.`;
  const [most] = shares;
  if (most === undefined || most.arcmin <= 0) return landed;
  const of = angleWordsFor(most.arcmin, missArcmin);
  return `${landed} ${capitalised(shareOf(of(most.arcmin), of(missArcmin)))} came from ${causeWords[most.cause]}.`;
}

const shareOf = (part: string, whole: string): string =>
  part === whole ? `all ${whole}` : `${part} of the ${whole}`;

/** Why there is no way to draw, and what would have mended it. */
export function untracedInWords(untraced: Untraced): string {
  switch (untraced.reason) {
    case 'refused':
      return `The computer would not have these two stars. ${mendedInWords(untraced.mends)}`;
    case 'forgotten':
      return 'The computer had lost both stars by then: its voltage had gone for a moment. No go-to can be trusted after that.';
    case 'not-in-this-sky':
    case 'out-of-reach':
      return 'By what the computer believed, the star stood where the tube cannot go.';
    case 'undetermined':
      return 'What the computer knew left it open where the star would be.';
  }
}

const mendedInWords = (mends: readonly Cause[]): string =>
  mends.length === 0
    ? 'More than one thing stood in the way.'
    : `It would have taken them without ${mends.map((cause) => causeWords[cause]).join(', or without ')}.`;

/** A share along the miss: towards it, or back from it. */
export const shareInWords = (arcmin: number, words: (arcmin: number) => string): string =>
  arcmin < 0 ? `${words(arcmin)} less` : words(arcmin);
