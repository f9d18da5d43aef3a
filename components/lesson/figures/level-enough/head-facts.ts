import { legReaches } from '@/lib/levelling/leg-to-move';
import {
  bubbleOf,
  legIndices,
  slopeOf,
  startOf,
  tiltOfHead,
  type LegIndex,
  type TripodSite,
  type TripodState,
} from '@/lib/levelling/tripod';
import { vialShowsDeg, type BubblePlace } from '@/lib/levelling/vial';
import { degreesToRadians } from '@/lib/units/angle';
import type { FigureKit } from '../figure-data';

/** Ground that a tripod is set down on: how far the head then leans, and which side is high; degrees. */
export type Ground = { tiltDeg: number; towardsDeg: number };

export const grounds: readonly Ground[] = [
  { tiltDeg: 2.5, towardsDeg: 165 },
  { tiltDeg: 3.2, towardsDeg: 78 },
  { tiltDeg: 1.8, towardsDeg: 312 },
  { tiltDeg: 3.8, towardsDeg: 226 },
];

/** Changes of the three legs from where they started, millimetres; out is positive. */
export type LegChanges = readonly [number, number, number];

export type HeadFacts = {
  tiltDeg: number;
  risesTowardsDeg: number;
  bubble: BubblePlace;
  /** As level as a vial can show. */
  level: boolean;
  /** The leg that would do most now, how far it would go, and what it would leave. */
  best: { leg: LegIndex; byMm: number; leavesDeg: number };
};

type Tripod = FigureKit['bench']['tripod'];
/** The figure's legs move this far either way; in the middle of the tripod's own range. */
export const mostChangeMm = 70;

function siteOn({ tiltDeg, towardsDeg }: Ground, tripod: Tripod): TripodSite {
  const slope = Math.tan(degreesToRadians(tiltDeg));
  const leg = (azimuthDeg: number) => ({
    azimuthDeg,
    groundMm:
      tripod.footCircleRadiusMm * slope * Math.cos(degreesToRadians(azimuthDeg - towardsDeg)),
    sinksMm: 0,
    startMm: (tripod.legMinMm + tripod.legMaxMm) / 2,
  });
  return {
    ...tripod,
    legs: [leg(0), leg(120), leg(240)],
    vial: { markAzimuthDeg: 0, zeroRightMm: 0, zeroUpMm: 0 },
    armTurns: false,
  };
}

/** A kit's tripod on that ground with its legs changed, as the levelling engine has it. */
export function headFacts(ground: Ground, tripod: Tripod, changes: LegChanges): HeadFacts {
  const site = siteOn(ground, tripod);
  const start = startOf(site);
  const changed = (leg: LegIndex) => ({
    ...start.legs[leg],
    lengthMm: start.legs[leg].lengthMm + changes[leg],
  });
  const state: TripodState = { ...start, legs: [changed(0), changed(1), changed(2)] };
  const tilt = tiltOfHead(site, state);
  const [reach] = legReaches(site, state, slopeOf(site, state));
  if (reach === undefined) throw new Error(`a tripod has ${String(legIndices.length)} legs`);
  return {
    ...tilt,
    bubble: bubbleOf(site, state),
    level: tilt.tiltDeg <= vialShowsDeg,
    best: {
      leg: reach.leg,
      byMm: Math.round(reach.toMm - state.legs[reach.leg].lengthMm),
      leavesDeg: reach.tiltDeg,
    },
  };
}
