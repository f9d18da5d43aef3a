import { degreesToRadians } from '../units/angle';
import { headSlope, tiltOf, type Slope, type Tilt } from './head-slope';
import { bubblePlace, type BubblePlace, type Vial } from './vial';

export const legIndices = [0, 1, 2] as const;
export type LegIndex = (typeof legIndices)[number];

/** Where one leg stands, and how it was found. */
export type LegSite = {
  azimuthDeg: number;
  /** Of the ground under the foot, above any common level. */
  groundMm: number;
  /** How far the foot goes in when it is trodden in or weight comes on it; nought on firm ground. */
  sinksMm: number;
  startMm: number;
};

/** A tripod as it was set down, and the vial on its head. */
export type TripodSite = {
  footCircleRadiusMm: number;
  /** Of a leg from the vertical. */
  splayDeg: number;
  legMinMm: number;
  legMaxMm: number;
  legs: readonly [LegSite, LegSite, LegSite];
  vial: Vial;
  /** Whether the arm that carries the vial can be turned by half a turn. */
  armTurns: boolean;
};

export type Leg = {
  lengthMm: number;
  /** Its lock is open: it slides. */
  open: boolean;
  sunk: boolean;
  /** It has slid since its lock was opened. */
  slid: boolean;
};

export type TripodState = {
  legs: readonly [Leg, Leg, Leg];
  armTurned: boolean;
  tubeOn: boolean;
  /** Somebody has the weight of mount and tube in their hands. */
  held: boolean;
  /** Legs let out or in so far: one each time a lock was opened and the leg slid. */
  moves: number;
  /** The first leg that ran in under the tube because its lock was open and nobody held it. */
  ranIn: LegIndex | null;
};

const standing = ({ startMm }: LegSite): Leg => ({
  lengthMm: startMm,
  open: false,
  sunk: false,
  slid: false,
});

export function startOf({ legs: [a, b, c] }: TripodSite): TripodState {
  return {
    legs: [standing(a), standing(b), standing(c)],
    armTurned: false,
    tubeOn: false,
    held: false,
    moves: 0,
    ranIn: null,
  };
}

/** How high a leg carries the head: the ground, less what its foot has sunk, and ΔL cos β of its length. */
export function carriedMm(site: TripodSite, state: TripodState, leg: LegIndex): number {
  const { groundMm, sinksMm } = site.legs[leg];
  const { lengthMm, sunk } = state.legs[leg];
  return groundMm - (sunk ? sinksMm : 0) + lengthMm * Math.cos(degreesToRadians(site.splayDeg));
}

export const slopeOf = (site: TripodSite, state: TripodState): Slope =>
  headSlope(
    site.footCircleRadiusMm,
    legIndices.map((leg) => ({
      azimuthDeg: site.legs[leg].azimuthDeg,
      heightMm: carriedMm(site, state, leg),
    })),
  );

export const tiltOfHead = (site: TripodSite, state: TripodState): Tilt =>
  tiltOf(slopeOf(site, state));

/** The vial as the arm carries it now. */
export const vialNow = ({ vial }: TripodSite, { armTurned }: TripodState): Vial =>
  armTurned ? { ...vial, markAzimuthDeg: (vial.markAzimuthDeg + 180) % 360 } : vial;

export const bubbleOf = (site: TripodSite, state: TripodState): BubblePlace =>
  bubblePlace(tiltOfHead(site, state), vialNow(site, state));
