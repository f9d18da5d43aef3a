import { angleInWords, angleWordsFor } from '@/components/sky/angle-words';
import type { RunKit } from '@/lib/alignment/setup';
import type { RunAdvice, RunCriterion, RunResult, RunStarResult } from '@/lib/grading/run-result';
import type { FieldOffset } from '@/lib/optics/image-orientation';
import { ofHundred } from '../pair/pair-result-words';

export const whichInWords = (which: 1 | 2): string => (which === 1 ? 'first' : 'second');

const degree = (value: number): string => `${Math.abs(value).toFixed(1)}°`;
/** Straight away up to a minute of time, then minutes. */
export const minutesText = (minutes: number): string =>
  minutes < 1 ? 'less than a minute' : `${String(Math.round(minutes))} min`;

/** The one thing to do differently next time. */
export function runAdviceInWords(advice: RunAdvice): string {
  switch (advice.code) {
    case 'well-done':
      return 'Nothing to change: the right stars, well centred, and rightly judged.';
    case 'sun':
      return `Keep clear of the Sun. The tube or its finder came within ${degree(advice.distanceDeg)} of it while it was up: one look would blind. With the Sun above the horizon the caps stay on.`;
    case 'start-position': {
      const parts = [
        ...(Math.abs(advice.azimuthErrorDeg) >= 0.5
          ? [`${degree(advice.azimuthErrorDeg)} off north`]
          : []),
        ...(Math.abs(advice.altitudeErrorDeg) >= 0.5
          ? [`${degree(advice.altitudeErrorDeg)} off level`]
          : []),
      ];
      return `Take longer over the start position: it was ${parts.join(' and ')}. A good start lets the first slew land near its star, and a wrong star shows at once.`;
    }
    case 'start-by-compass':
      return `You started by the compass needle as it stands. Here it points ${degree(advice.declinationDeg)} ${advice.declinationDeg > 0 ? 'east' : 'west'} of true north: set the tube that much to the ${advice.declinationDeg > 0 ? 'left' : 'right'} of where the needle points.`;
    case 'planet-for-star':
      return `Your ${whichInWords(advice.which)} star was no star: you confirmed ${advice.planet} as ${advice.name}. Planets shine steadily, stars twinkle; before you confirm, look whether it does.`;
    case 'wrong-star':
      return `You confirmed ${advice.reallyName} as ${advice.name}. The two are ${degree(advice.separationDeg)} apart: compare with the stars around it before you confirm, not with brightness alone.`;
    case 'empty-field':
      return `When you confirmed ${advice.name}, the eyepiece showed only empty sky: ${advice.name} was ${angleInWords(advice.offsetArcmin)} away. What is on the dot need not be in the eyepiece. Look in before you confirm.`;
    case 'off-centre':
      return `Centre the ${whichInWords(advice.which)} star more closely: it stood ${angleInWords(advice.offsetArcmin)} from the middle, ${tenthsText(advice.shareOfRadius)} of the way to the edge of the field. Every go-to carries that along.`;
    case 'final-approach':
      return `Finish the centring of the ${whichInWords(advice.which)} star in the final approach direction. The last move went the other way, and the play of the gears left the readings ${angleInWords(advice.backlashArcmin)} wrong. Go a little too far, then come back in that direction.`;
    case 'pair':
      return `Choose two stars that lie better to each other. On an ordinary night yours put ${ofHundred(advice.hitRate)} of 100 targets into the eyepiece, the best pair ${ofHundred(advice.bestHitRate)}; tonight may have gone better or worse.`;
    case 'trusted-a-bad-one':
      return `Do not trust an alignment before a third star has shown that it is good. With this one only ${ofHundred(advice.hitRate)} of 100 targets would be in the eyepiece.`;
    case 'doubted-a-good-one':
      return `This alignment was better than you thought: ${ofHundred(advice.hitRate)} of 100 targets would be in the eyepiece. A third star in the field is good reason to trust it.`;
    case 'slow':
      return `All well, but it took ${minutesText(advice.minutes)} under the sky, where ${minutesText(advice.minutesAllowed)} were allowed. Bring the star near with a long step before you use short ones.`;
  }
}

const tenthsText = (share: number): string => `${String(Math.round(share * 10))} tenths`;

export function runCriterionInWords(
  { id }: RunCriterion,
  { stars }: Pick<RunResult, 'stars'>,
): string {
  const named = (index: 0 | 1): string =>
    stars[index] === undefined ? '' : `: ${stars[index].name}`;
  switch (id) {
    case 'start-position':
      return 'Start position';
    case 'first-star':
      return `The right first star${named(0)}`;
    case 'first-centring':
      return 'How well it was centred';
    case 'second-star':
      return `The right second star${named(1)}`;
    case 'second-centring':
      return 'How well that was centred';
    case 'pair':
      return 'How the two lie to each other';
    case 'judgement':
      return 'Your judgement of the result';
    case 'time':
      return 'Time under the sky';
  }
}

/** Nearer to the middle than this nobody can see that a star is off it. */
const middleArcmin = 0.5;

/**
 * What stood under the crosshair, and how far away the star that was meant was: one sentence.
 * `meantArcmin` is from the middle of the field to that star; null where no path tells it.
 */
export function confirmedInWords(star: RunStarResult, meantArcmin: number | null): string {
  const { name, reallyName, offsetArcmin, fieldRadiusArcmin } = star;
  if (reallyName === null) {
    const inWords = angleWordsFor(offsetArcmin, fieldRadiusArcmin);
    return `No star was in the eyepiece, only empty sky: ${name} was ${inWords(offsetArcmin)} away, and the eyepiece shows what lies within ${inWords(fieldRadiusArcmin)} of its middle.`;
  }
  if (star.right)
    return `It was the right star: ${name}, ${offsetArcmin < middleArcmin ? 'in' : `${angleInWords(offsetArcmin)} from`} the middle of the eyepiece.`;
  const where = meantArcmin === null ? '' : `, and ${name} was ${angleInWords(meantArcmin)} away`;
  return `It was the wrong star: ${reallyName} was in the eyepiece${where}.`;
}

/** Below this, beside degrees, an offset is told as less than a tenth of one, and goes unsaid. */
const nothingBesideDegreesArcmin = 3;

/** Where something stands beside the middle of the eyepiece, as the eye sees it in the sky: "2.1° to the left and 0.4° up". */
export function besideInWords({ rightArcmin, upArcmin }: FieldOffset): string {
  const inWords = angleWordsFor(rightArcmin, upArcmin);
  const least = inWords === angleInWords ? 0 : nothingBesideDegreesArcmin;
  return [
    { arcmin: rightArcmin, where: `to the ${rightArcmin < 0 ? 'left' : 'right'}` },
    { arcmin: upArcmin, where: upArcmin < 0 ? 'down' : 'up' },
  ]
    .filter(({ arcmin }) => Math.abs(arcmin) >= least)
    .map(({ arcmin, where }) => `${inWords(arcmin)} ${where}`)
    .join(' and ');
}

export function approachInWords({ finalApproachKept, backlashArcmin }: RunStarResult): string {
  return finalApproachKept
    ? 'Kept: the last moves took up the play, so the readings are true.'
    : `Not kept: the gears lay on the other side, and the readings are ${angleInWords(backlashArcmin)} off.`;
}

/** How the tube stood when the clutches were locked. Errors are set less wanted, degrees. */
export function startInWords({ azimuthErrorDeg, altitudeErrorDeg }: RunResult['start']): string {
  const side = azimuthErrorDeg > 0 ? 'right' : 'left';
  const height = altitudeErrorDeg > 0 ? 'above' : 'below';
  const facing =
    Math.abs(azimuthErrorDeg) < 0.05
      ? 'The tube faced true north'
      : `The tube faced ${degree(azimuthErrorDeg)} to the ${side} of true north`;
  return Math.abs(altitudeErrorDeg) < 0.05
    ? `${facing} and was level.`
    : `${facing}, ${degree(altitudeErrorDeg)} ${height} level.`;
}

/** "With your alignment 79 of 100 targets would be in the eyepiece; the best hand would have got 84 …" */
export function achievedInWords({
  achievedHitRate,
  perfectHitRate,
}: Pick<RunResult, 'achievedHitRate' | 'perfectHitRate'>): string | null {
  const best =
    perfectHitRate === null
      ? null
      : `the best hand would have got ${ofHundred(perfectHitRate)} with this telescope and these two stars`;
  if (achievedHitRate === null)
    return best === null ? null : `There is no alignment to go by; ${best}.`;
  const own = `With your alignment ${ofHundred(achievedHitRate)} of 100 targets would be in the eyepiece`;
  if (best === null || perfectHitRate === null) return `${own}.`;
  return Number(ofHundred(achievedHitRate)) >= Number(ofHundred(perfectHitRate))
    ? `${own}: no hand could have done better with this telescope and these two stars.`
    : `${own}; ${best}.`;
}

export function thirdInWords(third: NonNullable<RunResult['third']>): string {
  const inWords = angleWordsFor(third.missArcmin, third.fieldRadiusArcmin);
  const off = inWords(third.missArcmin);
  const field = inWords(third.fieldRadiusArcmin);
  return third.inField
    ? `${third.name} was in the eyepiece, ${off} from the middle of a field that reaches ${field}.`
    : `${third.name} was not in the eyepiece: the go-to missed it by ${off}, and the field reaches ${field}.`;
}

const deservedText = {
  trust: 'It deserved trust',
  doubt: 'It deserved doubt',
  either: 'It lay between good and bad: either judgement was fair',
} as const;

export function judgementInWords({
  trusted,
  deserved,
}: NonNullable<RunResult['judgement']>): string {
  const said = trusted ? 'You would have trusted it.' : 'You would not have trusted it.';
  const right = deserved === 'either' || (deserved === 'trust') === trusted;
  return `${said} ${deservedText[deserved]}${right ? (deserved === 'either' ? '.' : ', so you judged it rightly.') : '.'}`;
}

/** A gate that was failed, with what stands behind it. */
export const sunGateInWords = ({ atMs, distanceDeg }: RunResult['gates'][number]): string =>
  `At ${clockText(atMs)} into the run, with the Sun up, the tube or its finder pointed ${degree(distanceDeg)} from it; 30° is the least. One look at the Sun through a telescope blinds. Until this is right the answer is “not yet”, whatever the mark.`;

/** Minutes and seconds of sky time. */
export function clockText(atMs: number): string {
  const seconds = Math.round(atMs / 1000);
  const rest = `${String(seconds % 60)} s`;
  return seconds < 60 ? rest : `${String(Math.floor(seconds / 60))} min ${rest}`;
}

/** "when it was confirmed", "12 s before it was confirmed" */
export const beforeConfirmText = (seconds: number): string =>
  seconds < 0.5 ? 'When it was confirmed' : `${clockText(seconds * 1000)} before it was confirmed`;

const viewTexts = {
  true: 'shows the sky as the eye sees it',
  mirrored: 'shows the sky upright, with right and left exchanged',
  turned: 'shows the sky turned by half a circle',
} as const;

/** "Wren shows the sky turned by half a circle." */
export const orientationText = ({ name, orientation }: RunKit): string =>
  `${name} ${viewTexts[orientation]}.`;
