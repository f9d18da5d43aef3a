import { angleWordsFor } from '@/components/sky/angle-words';
import type { PairAdvice, PairCriterion, PairResult } from '@/lib/grading/pair-result';
import type { Caution, UnusableReason } from '@/lib/pointing/answer-key';
import { mostWithoutAnyPair } from '@/lib/pointing/pair-mark';

const degree = (value: number): string => `${value.toFixed(value < 10 ? 1 : 0)}°`;
const magnitude = (value: number): string => value.toFixed(1);

/** How to tell misses that are compared: in one unit, and what cannot be told not at all. */
export function errorWordsFor(
  ...errorsArcmin: readonly (number | null)[]
): (errorArcmin: number | null) => string {
  const inWords = angleWordsFor(...errorsArcmin.filter((error) => error !== null));
  return (error) => (error === null ? 'cannot be told' : inWords(error));
}

export const errorInWords = (errorArcmin: number | null): string =>
  errorWordsFor(errorArcmin)(errorArcmin);

/** A hit rate as a count of targets. */
export const ofHundred = (hitRate: number): string => String(Math.round(hitRate * 100));

/** Why a star may not serve: what is so, and what the limit was. */
export function reasonInWords(reason: UnusableReason): string {
  switch (reason.code) {
    case 'no-name':
      return 'It has neither a name nor a letter, so no mount knows it as an alignment star.';
    case 'too-faint':
      return `It is too faint: magnitude ${magnitude(reason.magnitude)}, where ${magnitude(reason.faintestMagnitude)} is the faintest that may serve.`;
    case 'variable':
      return 'Its brightness changes greatly over weeks or months, so it cannot be relied on to be there.';
    case 'too-low':
      return `It stands too low: ${degree(reason.altitudeDeg)} up, where ${degree(reason.lowestAltitudeDeg)} is the least. Thick air makes it swim.`;
    case 'too-high':
      return `It stands too high: ${degree(reason.altitudeDeg)} up, where ${degree(reason.highestAltitudeDeg)} is the most. Near the zenith a small error turns the mount a long way round.`;
    case 'behind-horizon':
      return `The skyline is in the way: the star stands ${degree(reason.altitudeDeg)} up, the skyline there reaches ${degree(reason.horizonAltitudeDeg)}, and ${degree(reason.marginDeg)} of clear sky are wanted above it.`;
    case 'sky-too-bright':
      return `The sky is too bright for it: it looks like magnitude ${magnitude(reason.seenAsMagnitude)}, and the eye now reaches ${magnitude(reason.nakedEyeLimit)}; one magnitude of reserve is wanted.`;
    case 'near-moon':
      return `It is too close to the Moon: ${degree(reason.distanceDeg)} away, where ${degree(reason.moonDistanceDeg)} is the least.`;
    case 'behind-cloud':
      return 'It is behind cloud.';
  }
}

/** What could be taken for a star, how far off and how bright it looks beside it. */
export function cautionInWords(caution: Caution): string {
  const { neighbourName, separationDeg, fainterByMagnitudes } = caution;
  const brightness =
    fainterByMagnitudes < -0.05
      ? `looks ${magnitude(-fainterByMagnitudes)} magnitudes brighter`
      : fainterByMagnitudes < 0.05
        ? 'looks just as bright'
        : `looks only ${magnitude(fainterByMagnitudes)} magnitudes fainter`;
  return `${neighbourName}, ${degree(separationDeg)} away, ${brightness}.`;
}

const starNamed = (result: Pick<PairResult, 'stars'>, hip: number): string =>
  result.stars.find((star) => star.hip === hip)?.name ?? 'That star';

/** One sentence on the biggest shortfall and what to do about it next time. */
export function adviceInWords(
  advice: PairAdvice,
  result: Pick<PairResult, 'stars' | 'best'>,
): string {
  switch (advice.code) {
    case 'well-chosen':
      return 'Well chosen: no pair in tonight’s sky would point noticeably better.';
    case 'said-none-rightly':
      return 'Right: tonight, from here, no two stars would do. Wait for the sky to turn or the cloud to pass.';
    case 'said-none-wrongly':
      return `There was a pair after all: ${advice.usablePairs === 1 ? 'one pair' : `${advice.usablePairs} pairs`} of stars would have done. Before giving up, go once round the whole sky between the lowest and the highest limit.`;
    case 'there-was-none':
      return `Tonight had no good pair: when every candidate fails somewhere, saying so is the right answer. Stars chosen all the same earn ${mostWithoutAnyPair} of 100 marks at most, whatever each is worth.`;
    case 'star-unusable':
      return `${starNamed(result, advice.hip)} may not serve. ${reasonInWords(advice.reason)}`;
    case 'look-alike-missed':
      return `${starNamed(result, advice.hip)} can be mistaken: ${cautionInWords(advice.caution)} Look round each star before you trust it.`;
    case 'too-close':
      return `Your two stars are only ${degree(advice.separationDeg)} apart: like two nails side by side, they hold one end of the sky and let the other swing. Take stars farther apart.`;
    case 'same-azimuth':
      return `Your two stars lie in nearly the same direction, ${degree(advice.azimuthGapDeg)} apart along the horizon. This mount has to find its own altitude zero, and for that it needs stars in different directions.`;
    case 'nearly-opposite':
      return `Your two stars are ${degree(advice.separationDeg)} apart, almost opposite each other: the sky can still turn about the line between them. Take one nearer to a right angle from the first.`;
    case 'better-pair':
      return `Both stars may serve, but they lie unluckily to each other: ${ofHundred(advice.hitRate)} of 100 targets would be in the eyepiece, with the best pair ${ofHundred(advice.bestHitRate)}.`;
  }
}

export function criterionInWords(
  criterion: PairCriterion,
  result: Pick<PairResult, 'stars'>,
): string {
  switch (criterion.id) {
    case 'first-star':
      return `First star${result.stars[0] === undefined ? '' : `: ${result.stars[0].name}`}`;
    case 'second-star':
      return `Second star${result.stars[1] === undefined ? '' : `: ${result.stars[1].name}`}`;
    case 'geometry':
      return 'How the two lie to each other';
    case 'none-usable':
      return 'Saying that there is no good pair';
  }
}

/** Why two stars earn nothing for how they lie to each other; null where they earn something. */
export function noGeometryInWords(
  { id, earned }: PairCriterion,
  { stars, best }: Pick<PairResult, 'stars' | 'best'>,
): string | null {
  if (id !== 'geometry' || earned > 0) return null;
  if (stars.some(({ usable }) => !usable)) return 'counts only when both stars may serve';
  if (best === null) return 'tonight no two stars would do';
  return 'none at half the best share of targets or less';
}

/** "82 of 100 targets would be in the eyepiece; with the best pair, 97." */
export function hitRateInWords({
  chosen,
  best,
}: Pick<PairResult, 'chosen' | 'best'>): string | null {
  if (chosen === null) {
    return best === null
      ? null
      : `With the best pair, ${ofHundred(best.hitRate)} of 100 targets would be in the eyepiece.`;
  }
  const own = `${ofHundred(chosen.hitRate)} of 100 targets would be in the eyepiece`;
  return best === null ? `${own}.` : `${own}; with the best pair, ${ofHundred(best.hitRate)}.`;
}
