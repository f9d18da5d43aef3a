import { togetherAsOne, type PlacedMass } from './centre-of-mass';
import { clampedAt, type ClampedTube } from './torque';
import type { BalanceBench, BalanceState } from './tube-bench';

/** The tube with what is on it, as one. */
export const wholeTube = (bench: BalanceBench, on: readonly string[]): PlacedMass =>
  togetherAsOne([bench.tube, ...bench.parts.filter((part) => on.includes(part.id))]);

/** The same as its clamp holds it. */
export const tubeInClamp = (
  bench: BalanceBench,
  { on, clampMm }: Pick<BalanceState, 'on' | 'clampMm'>,
): ClampedTube => clampedAt(wholeTube(bench, on), clampMm);
