import { creepFrom } from '../balance/creep';
import type { ClampedTube } from '../balance/torque';

/**
 * How fast a greased clutch gives way when it is pulled at twice what it holds, degrees a minute; in
 * between in proportion to what is too much. Ours, without a source: slow enough that nobody sees it
 * happen, fast enough that a star is gone some minutes later.
 */
const degPerMinuteAtTwice = 0.5;

/**
 * How far a tube creeps in its clutch in so many minutes from an altitude, while the reading stands:
 * negative where the front sinks. It stops where the clutch holds again.
 */
export function creepOver({
  tube,
  holdingTorqueNm,
  altitudeDeg,
  minutes,
}: {
  tube: ClampedTube;
  holdingTorqueNm: number;
  altitudeDeg: number;
  minutes: number;
}): number {
  const { moves, restDeg, torqueNm } = creepFrom(tube, altitudeDeg, holdingTorqueNm);
  if (moves === 'holds') return 0;
  const tooMuch = Math.abs(torqueNm) / holdingTorqueNm - 1;
  const byDeg = Math.min(degPerMinuteAtTwice * tooMuch * minutes, Math.abs(restDeg - altitudeDeg));
  return moves === 'front' ? -byDeg : byDeg;
}
