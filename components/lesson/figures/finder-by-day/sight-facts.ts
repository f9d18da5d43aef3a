import { dotResidualArcmin } from '@/lib/finder/dot-residual';
import { trueFieldArcmin } from '@/lib/optics/true-field';
import type { FigureKit } from '../figure-data';

/** What the finder may be set on, metres away; null is a star. */
export const sightDistances: readonly (number | null)[] = [5, 8, 15, 30, 60, 120, 300, 1000, null];
export const startingDistanceM = 8;

export type SightKit = Pick<FigureKit, 'name' | 'telescope' | 'bench'>;
export type SightEyepiece = FigureKit['eyepieces'][number];

/** How far the dot is off at the stars, and whether a star under it is in the eyepiece. Arcminutes. */
export function sightFacts(kit: SightKit, eyepiece: SightEyepiece, distanceM: number | null) {
  const residualArcmin =
    distanceM === null
      ? 0
      : dotResidualArcmin({ apartMm: kit.bench.finderBesideTubeMm, distanceM });
  const radiusArcmin = trueFieldArcmin(kit.telescope, eyepiece) / 2;
  return { residualArcmin, radiusArcmin, inView: residualArcmin < radiusArcmin };
}

export const distanceInWords = (distanceM: number | null): string =>
  distanceM === null
    ? 'a star'
    : distanceM >= 1000
      ? `something ${String(distanceM / 1000)} km away`
      : `something ${String(distanceM)} m away`;

export function sightWords(
  kit: SightKit,
  eyepiece: SightEyepiece,
  distanceM: number | null,
): string {
  const { residualArcmin, radiusArcmin, inView } = sightFacts(kit, eyepiece, distanceM);
  const off =
    residualArcmin === 0
      ? 'the two lines of sight are parallel, and the dot is right'
      : `the dot is off by ${residualArcmin < 10 ? residualArcmin.toFixed(1) : residualArcmin.toFixed(0)}′ at the stars`;
  return `Set on ${distanceInWords(distanceM)}, ${off}. In the ${String(eyepiece.focalLengthMm)} mm eyepiece of ${kit.name} the edge is ${radiusArcmin.toFixed(0)}′ from the middle: a star under the dot is ${inView ? 'in view' : 'out of view'}.`;
}
