import type { PlacedMass } from './centre-of-mass';
import { wholeTube } from './tube-in-clamp';
import { bestForwardMm, worstTorque, type AltitudeRange, type WorstTorque } from './holding';
import { clampedAt, freeFallMPerS2 } from './torque';
import type { BalanceBench } from './tube-bench';

/** Where the clamp should grip so that the greatest torque over the range is least, as far as the bar reaches. */
export function bestClampMm(bench: BalanceBench, on: readonly string[]): number {
  const tube = wholeTube(bench, on);
  const wanted = tube.alongMm + bestForwardMm(tube.aboveAxisMm, bench.range);
  // The worst torque grows on either side of the best place: at the bar's end it is least there.
  return Math.max(bench.bar.leastMm, Math.min(bench.bar.mostMm, wanted));
}

/** How hard the weight pulls at worst with the clamp there, and where. */
export const worstAt = (
  bench: BalanceBench,
  on: readonly string[],
  clampMm: number,
  range: AltitudeRange = bench.range,
): WorstTorque => worstTorque(clampedAt(wholeTube(bench, on), clampMm), range);

/** Whether the clutch could hold the tube over the whole range with these parts, wherever it is slid. */
export const canHold = (bench: BalanceBench, on: readonly string[]): boolean =>
  Math.abs(worstAt(bench, on, bestClampMm(bench, on)).torqueNm) <= bench.holdingTorqueNm;

/**
 * How far the clamp may be from the balance point while the tube, level, still just holds: there one
 * end begins to sink. Millimetres, holding torque / M g.
 */
export const edgeMm = (tube: Pick<PlacedMass, 'massKg'>, holdingTorqueNm: number): number =>
  (1000 * holdingTorqueNm) / (tube.massKg * freeFallMPerS2);
