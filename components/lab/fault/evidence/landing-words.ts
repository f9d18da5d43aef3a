import type { Landing } from '@/lib/faults/evidence';

/** Below this nobody at an eyepiece could tell it from nothing. */
const nothingArcmin = 0.5;

/** An angle as the trade says it: arcminutes, and degrees from two degrees on. */
export function angleInWords(angleDeg: number): string {
  const arcmin = Math.abs(angleDeg) * 60;
  if (arcmin >= 120) return `${Math.abs(angleDeg).toFixed(1)}°`;
  return `${arcmin.toFixed(arcmin < 9.95 ? 1 : 0)}′`;
}

/** How far off on the sky, as a straight line in the plane of the picture, degrees. */
export const missDeg = ({ rightDeg, upDeg }: Landing): number => Math.hypot(rightDeg, upDeg);

const counts = (angleDeg: number): boolean => Math.abs(angleDeg) * 60 >= nothingArcmin;

export function sidewaysText({ rightDeg }: Landing): string | null {
  if (!counts(rightDeg)) return null;
  return `${angleInWords(rightDeg)} too far ${rightDeg > 0 ? 'right' : 'left'} along the horizon`;
}

export function heightText({ upDeg }: Landing): string | null {
  if (!counts(upDeg)) return null;
  return `${angleInWords(upDeg)} too ${upDeg > 0 ? 'high' : 'low'}`;
}

/** "15.0° too far right along the horizon, 2.1° too low" */
export function landingInWords(landing: Landing): string {
  const parts = [sidewaysText(landing), heightText(landing)].filter((part) => part !== null);
  return parts.length === 0 ? 'right on the star' : parts.join(', ');
}

/** From here on right and up say less than that it is somewhere else altogether. */
const elsewhereDeg = 60;

/** Whether whoever looks in would see the star. The radius is that of the eyepiece's field. */
export function seenInWords(landing: Landing, fieldRadiusArcmin: number): string {
  const miss = missDeg(landing);
  if (miss > elsewhereDeg)
    return `That is quite another part of the sky: ${Math.round(miss).toString()}° from the star.`;
  const field = angleInWords(fieldRadiusArcmin / 60);
  return miss * 60 <= fieldRadiusArcmin
    ? `The star is in the eyepiece, whose field reaches ${field} from its middle.`
    : `The star is not in the eyepiece: its field reaches ${field} from its middle.`;
}
