import type { LeanFacts } from './lean-facts';

/** "48′", "1.6°", "less than 0.1′". */
export function offWords(arcmin: number): string {
  if (arcmin < 0.1) return 'under 0.1′';
  if (arcmin >= 90) return `${(arcmin / 60).toFixed(1)}°`;
  return `${arcmin < 10 ? arcmin.toFixed(1) : String(Math.round(arcmin))}′`;
}

const inIt = (arcmin: number, fieldArcmin: number): string =>
  arcmin <= fieldArcmin ? 'in the eyepiece' : 'outside the eyepiece';

/** What the three pictures show, in sentences. */
export function leanWords(name: string, tiltDeg: number, facts: LeanFacts): string {
  const { fieldArcmin, first, afterTwoStarsArcmin, believedLevel } = facts;
  const aligned =
    afterTwoStarsArcmin === null
      ? 'The computer believes in no base that leans so far: it refuses the alignment.'
      : `After two stars: ${offWords(afterTwoStarsArcmin)} anywhere on the sky.`;
  return `A lean of ${tiltDeg.toFixed(1)}°. ${name} shows ${String(Math.round(fieldArcmin))}′ to each side. First slew: ${offWords(first.missArcmin)} off, ${inIt(first.missArcmin, fieldArcmin)}. ${aligned} Taken as level: ${offWords(believedLevel.missArcmin)} off, ${inIt(believedLevel.missArcmin, fieldArcmin)}.`;
}
