import type { AlignmentOutcome } from '@/lib/pointing/pointing-model';
import type { SpoiltFacts } from './spoilt-facts';

const angle = (arcmin: number): string =>
  Math.round(Math.abs(arcmin)) >= 60
    ? `${(Math.abs(arcmin) / 60).toFixed(1)}°`
    : `${String(Math.round(Math.abs(arcmin)))}′`;

/** The sentence that the hand control shows. */
export function saidByMount(outcome: AlignmentOutcome): string {
  switch (outcome.kind) {
    case 'agree':
      return `“These two agree to ${Math.abs(outcome.mismatchArcmin) < 1 ? '1′ or better' : angle(outcome.mismatchArcmin)}.”`;
    case 'disagree':
      return `“These two disagree by ${angle(outcome.mismatchArcmin)}.”`;
    case 'absurd-zero':
      return '“These two do not fit together.”';
    case 'base-on-its-side':
      return outcome.baseTiltDeg < 30
        ? `“The base would lean by ${outcome.baseTiltDeg.toFixed(1)}°.”`
        : '“The base would lie on its side: are the two stars swapped?”';
    case 'undetermined':
      return '“These two leave it open how the mount stands.”';
  }
}

/** What stands behind it. */
export function behindIt(
  { outcome, thirdMissArcmin, hits }: SpoiltFacts,
  fieldRadiusArcmin: number,
): string {
  if (outcome.kind !== 'agree' || thirdMissArcmin === null || hits === null)
    return 'The mount does not go on with these two. That is its good side: it has noticed.';
  const inside = thirdMissArcmin <= fieldRadiusArcmin;
  const zeroArcmin = 60 * outcome.model.altitudeZeroDeg;
  const level =
    zeroArcmin === 0
      ? 'It takes the tube as level at the start, and believes'
      : `It believes that the tube stood ${angle(zeroArcmin)} off level at the start, and`;
  return `${level} that the base leans by ${angle(60 * outcome.baseTiltDeg)}. A go-to to the third star ends ${angle(thirdMissArcmin)} beside it: ${inside ? 'in the eyepiece' : 'outside the eyepiece'}, which shows ${angle(fieldRadiusArcmin)} to each side. Hit rate: ${String(Math.round(hits))} of 100.`;
}
