import { pairWorth } from '../../pointing/pair-worth';
import type { ItemKit } from '../item-family';
import type { ChartPlace } from './sky-chart';

const atFour = (gapDeg: number): readonly [ChartPlace, ChartPlace] => [
  { azimuthDeg: 100, altitudeDeg: 40 },
  { azimuthDeg: 100 + gapDeg, altitudeDeg: 40 },
];

/** Of 100 targets, with two stars 40° up, so far apart in azimuth, centred so well. */
export function hitsOf(
  kit: ItemKit,
  radius: number,
  { gapDeg, centringArcmin }: { gapDeg: number; centringArcmin: number },
): number {
  const telescope = { ...kit.telescope, centringArcmin };
  return 100 * pairWorth(telescope, radius, ...atFour(gapDeg)).hitRate;
}
