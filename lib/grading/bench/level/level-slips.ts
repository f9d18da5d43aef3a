import { legReaches } from '../../../levelling/leg-to-move';
import {
  bubbleOf,
  legIndices,
  slopeOf,
  tiltOfHead,
  type TripodState,
} from '../../../levelling/tripod';
import { slopeReadUnturned, vialMm, vialShowsDeg } from '../../../levelling/vial';
import { radiansToDegrees } from '../../../units/angle';
import { settled } from '../../../variants/bench/level/draw-tripod-site';
import type { LevelVariant } from '../../../variants/bench/level/level-variant';
import type { FirstMove } from './level-first-move';
import type { LevelSlip } from './level-result';
import type { LevelSubmission } from './level-submission';

/** Half a degree, and the bubble no longer touches the ring. */
const inTheRingMm = vialMm.ringRadius - vialMm.bubbleRadius;

/** Whatever is wrong with how the head was left. */
export function tiltSlip(variant: LevelVariant, last: TripodState): LevelSlip | null {
  const { site, template } = variant;
  const { tiltDeg, risesTowardsDeg } = tiltOfHead(site, last);
  if (tiltDeg <= vialShowsDeg) return null;
  const { eastMm, northMm } = bubbleOf(site, last);
  if (template === 'untrue-vial' && Math.hypot(eastMm, northMm) <= inTheRingMm)
    return { code: 'trusted-untrue-vial', tiltDeg, armWasTurned: last.armTurned };
  const [reach] = legReaches(site, last, slopeOf(site, last));
  if (reach === undefined) throw new Error('a tripod has three legs');
  const byMm = reach.toMm - last.legs[reach.leg].lengthMm;
  return { code: 'left-tilted', tiltDeg, risesTowardsDeg, leg: reach.leg, byMm };
}

/** A soft foot that nobody had trodden in before the tube came. */
export function sinkingSlip(
  { site }: LevelVariant,
  actions: LevelSubmission['actions'],
  last: TripodState,
): LevelSlip | null {
  const loadedAt = actions.findIndex((action) => action.do === 'tube-on');
  const trodden = actions
    .slice(0, loadedAt)
    .flatMap((action) => (action.do === 'tread-in' ? [action.leg] : []));
  const leg = legIndices.find((one) => site.legs[one].sinksMm > 0 && !trodden.includes(one));
  if (leg === undefined) return null;
  const { sinksMm } = site.legs[leg];
  // By itself: one leg down by h leans the head by atan(h / 1.5 r).
  const leansDeg = radiansToDegrees(Math.atan(sinksMm / (1.5 * site.footCircleRadiusMm)));
  const mended = tiltOfHead(site, last).tiltDeg <= vialShowsDeg;
  return { code: 'sank-under-tube', leg, sunkMm: sinksMm, leansDeg, mended };
}

/** Whatever is wrong with the first leg. */
export function firstLegSlip(variant: LevelVariant, first: FirstMove | null): LevelSlip | null {
  if (first === null || first.judgement === 'best') return null;
  const { leg, way, beforeDeg, afterDeg, best, bestWay } = first;
  const { site, template } = variant;
  if (template === 'turned-vial') {
    const { markAzimuthDeg } = site.vial;
    const [seen] = legReaches(site, settled(site), slopeReadUnturned(first.slope, markAzimuthDeg));
    if (seen?.leg === leg && leg !== best.leg)
      return { code: 'head-not-turned', leg, bestLeg: best.leg, markAzimuthDeg };
  }
  if (first.judgement === 'wrong-way') return { code: 'wrong-way', leg, way, beforeDeg, afterDeg };
  return {
    code: 'other-leg-first',
    leg,
    bestLeg: best.leg,
    bestWay,
    leavesDeg: first.couldLeaveDeg,
    couldLeaveDeg: best.tiltDeg,
  };
}
