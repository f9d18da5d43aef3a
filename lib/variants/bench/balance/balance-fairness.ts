import { bestClampMm, canHold, edgeMm, worstAt } from '../../../balance/answers';
import { tubeInClamp, wholeTube } from '../../../balance/tube-in-clamp';
import { creepFrom } from '../../../balance/creep';
import { torqueNm } from '../../../balance/torque';
import type { BalanceVariant } from './balance-variant';

/** Torques against what the clutch holds; outside of these a task is too easy, too fine or none. */
const clearlyCreeps = 1.25;
const holdsWell = 0.75;

/**
 * Whether a task is one of its kind, in the window of difficulty that all kinds share: what is asked
 * about is plain, and a place that holds with something to spare is there to be found.
 */
export function isFairBalance(variant: BalanceVariant): boolean {
  const { template, start, needed, bar, holdingTorqueNm, range } = variant;
  if (start.clampMm < bar.leastMm || start.clampMm > bar.mostMm) return false;
  const pull = (on: readonly string[], altitudeDeg: number): number =>
    Math.abs(torqueNm(tubeInClamp(variant, { on, clampMm: start.clampMm }), altitudeDeg)) /
    holdingTorqueNm;
  const worst = (on: readonly string[], clampMm: number): number =>
    Math.abs(worstAt(variant, on, clampMm).torqueNm) / holdingTorqueNm;
  const best = bestClampMm(variant, needed);
  const holdsThere = worst(needed, best) <= holdsWell && insideBar(variant, best);
  switch (template) {
    case 'first-balance':
      return holdsThere && pull(start.on, 0) >= clearlyCreeps;
    case 'phone-joins':
      return (
        holdsThere && worst(start.on, start.clampMm) <= 0.95 && pull(needed, 0) >= clearlyCreeps
      );
    case 'raised':
      return holdsThere && pull(needed, 0) <= 0.2 && pull(needed, range.highDeg) >= 1.15;
    case 'two-edges': {
      const tube = wholeTube(variant, needed);
      const edge = edgeMm(tube, holdingTorqueNm);
      return (
        holdsThere &&
        pull(needed, 0) >= clearlyCreeps &&
        [-1, 1].every((side) => insideBar(variant, tube.alongMm + side * edge))
      );
    }
    case 'short-bar':
      return worst(needed, best) >= clearlyCreeps && oneEndHelps(variant);
  }
}

/** A few millimetres of bar must be left, so that the place can be told from the bar's end. */
const insideBar = ({ bar }: BalanceVariant, clampMm: number): boolean =>
  clampMm >= bar.leastMm + 3 && clampMm <= bar.mostMm - 3;

/** The weight helps at one end and not at the other, and sliding alone does not. */
function oneEndHelps(variant: BalanceVariant): boolean {
  const { needed, bar, holdingTorqueNm } = variant;
  const best = bestClampMm(variant, needed);
  const unaided = creepFrom(
    tubeInClamp(variant, { on: needed, clampMm: best }),
    0,
    holdingTorqueNm,
  );
  const forwards = best === bar.mostMm;
  const good = forwards ? 'weight-front' : 'weight-back';
  const bad = forwards ? 'weight-back' : 'weight-front';
  if (unaided.moves === 'holds') return false;
  const aided = bestClampMm(variant, [...needed, good]);
  const worst = Math.abs(worstAt(variant, [...needed, good], aided).torqueNm);
  return (
    worst <= holdsWell * holdingTorqueNm &&
    insideBar(variant, aided) &&
    !canHold(variant, [...needed, bad])
  );
}
