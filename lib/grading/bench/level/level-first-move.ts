import { tiltOf, type Slope } from '../../../levelling/head-slope';
import { legReaches, type LegReach } from '../../../levelling/leg-to-move';
import {
  bubbleOf,
  slopeOf,
  tiltOfHead,
  type LegIndex,
  type TripodSite,
  type TripodState,
} from '../../../levelling/tripod';
import type { TripodAction } from '../../../levelling/tripod-actions';
import { vialMm, vialShowsDeg } from '../../../levelling/vial';
import type { LegWay } from './level-result';

/** A leg that leaves more than the best one by no more than this share of the tilt is as good. */
const asGoodShare = 0.2;

export type FirstMove = {
  leg: LegIndex;
  way: LegWay;
  /** As it stood, and as the first leg left it. */
  beforeDeg: number;
  afterDeg: number;
  /** The leg that could do most, and how level it could have made the head; the moved one's likewise. */
  best: LegReach;
  bestWay: LegWay;
  couldLeaveDeg: number;
  judgement: 'best' | 'right-way' | 'wrong-way';
  /** The slope just before, as it was. */
  slope: Slope;
};

/** The first leg that was slid, until its lock was closed; null where none was. */
export function firstMove(
  site: TripodSite,
  actions: readonly TripodAction[],
  states: readonly TripodState[],
): FirstMove | null {
  const at = actions.findIndex((action) => action.do === 'slide');
  const slide = actions[at];
  const before = states[at];
  if (slide?.do !== 'slide' || before === undefined) return null;
  const { leg } = slide;
  // Treading, holding and such may come between; another leg only after the lock.
  const locked = actions.findIndex((action, i) => i > at && action.do === 'lock');
  const until = states[locked < 0 ? states.length - 1 : locked];
  if (until === undefined) throw new Error('there is a state before each action');

  const slope = slopeOf(site, before);
  const reaches = legReaches(site, before, slope);
  const [best] = reaches;
  const own = reaches.find((reach) => reach.leg === leg);
  if (best === undefined || own === undefined) throw new Error('a tripod has three legs');
  const byMm = until.legs[leg].lengthMm - before.legs[leg].lengthMm;
  const judged = judge({
    reaches,
    leg,
    byMm,
    from: before,
    beforeSlope: slope,
    afterSlope: slopeOf(site, until),
  });
  // Nobody can know that a vial is untrue before they have turned it: what it shows counts too.
  const seen = seenSlope(site, before);
  const judgedBySight = judge({
    reaches: legReaches(site, before, seen),
    leg,
    byMm,
    from: before,
    beforeSlope: seen,
    afterSlope: seenSlope(site, until),
  });
  const verdicts = [judged, judgedBySight];
  return {
    leg,
    way: byMm >= 0 ? 'out' : 'in',
    beforeDeg: tiltOf(slope).tiltDeg,
    afterDeg: tiltOfHead(site, until).tiltDeg,
    best,
    bestWay: best.toMm >= before.legs[best.leg].lengthMm ? 'out' : 'in',
    couldLeaveDeg: own.tiltDeg,
    judgement:
      (['best', 'right-way'] as const).find((verdict) => verdicts.includes(verdict)) ?? 'wrong-way',
    slope,
  };
}

function judge({
  reaches,
  leg,
  byMm,
  from,
  beforeSlope,
  afterSlope,
}: {
  reaches: readonly LegReach[];
  leg: LegIndex;
  byMm: number;
  from: TripodState;
  beforeSlope: Slope;
  afterSlope: Slope;
}): FirstMove['judgement'] {
  const own = reaches.find((reach) => reach.leg === leg);
  if (own === undefined) throw new Error('a tripod has three legs');
  const { tiltDeg } = tiltOf(beforeSlope);
  // With a leg at its end the two others go in one after the other, and the first alone may gain
  // nothing; more tilt than the vial can show is the wrong way.
  const helps =
    (own.toMm - from.legs[leg].lengthMm) * byMm > 0 &&
    tiltOf(afterSlope).tiltDeg <= tiltDeg + vialShowsDeg;
  if (!helps) return 'wrong-way';
  const least = Math.min(...reaches.map((reach) => reach.tiltDeg));
  return own.tiltDeg <= least + asGoodShare * tiltDeg ? 'best' : 'right-way';
}

/** The slope that the bubble tells of, right or wrong. */
function seenSlope(site: TripodSite, state: TripodState): Slope {
  const { eastMm, northMm } = bubbleOf(site, state);
  return { east: eastMm / vialMm.curvatureRadius, north: northMm / vialMm.curvatureRadius };
}
