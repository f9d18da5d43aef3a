import { angleInWords, angleWordsFor } from '@/components/sky/angle-words';
import type { Landing } from '@/lib/faults/evidence';

/** Below this nobody at an eyepiece could tell it from nothing. */
const nothingArcmin = 0.5;
/** What is told as less than a tenth of a degree. */
const nothingBesideDegreesArcmin = 3;

/** How far off on the sky, as a straight line in the plane of the picture, degrees. */
export const missDeg = ({ rightDeg, upDeg }: Landing): number => Math.hypot(rightDeg, upDeg);

/**
 * A landing, to the side and in height, in one unit: what is nothing beside the other is left out.
 * None where the tube landed right on the star.
 */
export function landingParts({ rightDeg, upDeg }: Landing): readonly string[] {
  const inWords = angleWordsFor(rightDeg * 60, upDeg * 60);
  const leastArcmin = inWords === angleInWords ? nothingArcmin : nothingBesideDegreesArcmin;
  return [
    {
      arcmin: rightDeg * 60,
      where: `too far ${rightDeg > 0 ? 'right' : 'left'} along the horizon`,
    },
    { arcmin: upDeg * 60, where: `too ${upDeg > 0 ? 'high' : 'low'}` },
  ]
    .filter(({ arcmin }) => Math.abs(arcmin) >= leastArcmin)
    .map(({ arcmin, where }) => `${inWords(arcmin)} ${where}`);
}

/** "15.0° too far right along the horizon, 2.1° too low" */
export function landingInWords(landing: Landing): string {
  const parts = landingParts(landing);
  return parts.length === 0 ? 'right on the star' : parts.join(', ');
}

/** From here on right and up say less than that it is somewhere else altogether. */
const elsewhereDeg = 60;

/** Whether whoever looks in would see the star. The radius is that of the eyepiece's field. */
export function seenInWords(landing: Landing, fieldRadiusArcmin: number): string {
  const miss = missDeg(landing);
  if (miss > elsewhereDeg)
    return `That is quite another part of the sky: ${Math.round(miss).toString()}° from the star.`;
  const field = angleInWords(fieldRadiusArcmin);
  return miss * 60 <= fieldRadiusArcmin
    ? `The star is in the eyepiece, whose field reaches ${field} from its middle.`
    : `The star is not in the eyepiece: its field reaches ${field} from its middle.`;
}
