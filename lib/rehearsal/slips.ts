import type { FieldOffset } from '../optics/image-orientation';
import { wrap180 } from '../units/angle';
import type { ClockAndPlaceSlip } from './believed-frame';

/**
 * What the stages of an evening hand on to those that follow, as numbers with the size they really
 * have. Nothing in it says whose doing it was: the learner's, the telescope's, or of whoever set it up
 * before.
 */
export type Slips = {
  /** From levelling: the base's plane, and towards which azimuth it rises. */
  tilt: { tiltDeg: number; risesTowardsDeg: number };
  /** From clock and place. */
  clockAndPlace: ClockAndPlaceSlip;
  /** From the start position: the true azimuth that was taken for north, the altitude taken for level. */
  start: { azimuthDeg: number; altitudeDeg: number };
  /** From the finder: where its dot lies on the sky beside the tube, seen from behind it. */
  dot: FieldOffset;
  /** From the balance: how far the tube sinks (negative) or climbs in its clutch, while the reading stands. */
  creep: { betweenStarsDeg: number; afterSecondDeg: number };
  /** A clutch that was not locked: by how much the tube stays behind, once, after so many confirms. */
  clutch: { afterConfirm: number; azimuthDeg: number; altitudeDeg: number } | null;
  /** Somebody met a leg of a tripod that was not locked or not spread: the stand leans and turns more. */
  kick: Kick | null;
  /** From power: the slew of the evening, counted from 1, from which on each takes the computer's voltage. */
  resetsAtSlew: number | null;
};

export type Kick = {
  afterConfirm: number;
  tiltDeg: number;
  risesTowardsDeg: number;
  azimuthDeg: number;
};

/** An evening on which everything was done right. */
export const noSlips: Slips = {
  tilt: { tiltDeg: 0, risesTowardsDeg: 0 },
  clockAndPlace: { clockSeconds: 0, latitudeDeg: 0, longitudeDeg: 0 },
  start: { azimuthDeg: 0, altitudeDeg: 0 },
  dot: { rightArcmin: 0, upArcmin: 0 },
  creep: { betweenStarsDeg: 0, afterSecondDeg: 0 },
  clutch: null,
  kick: null,
  resetsAtSlew: null,
};

/** How the tripod was left, as far as a foot against it is concerned. */
export type TripodStanding = { legsSpread: boolean; legLocksFirm: boolean };

/** A kick bites only a tripod that can give: one with its legs spread and locked stands as it stood. */
export const kickThatBites = (
  kick: Kick | null,
  { legsSpread, legLocksFirm }: TripodStanding,
): Kick | null => (legsSpread && legLocksFirm ? null : kick);

/** An instant and a place: what the computer believes, or what is true. */
export type ClockAndPlace = {
  /** Milliseconds of the Unix epoch, at one and the same moment. */
  instantMs: number;
  latitudeDeg: number;
  /** East is positive. */
  longitudeDeg: number;
};

/** What was entered against what is true. */
export const clockAndPlaceSlip = (
  believed: ClockAndPlace,
  actual: ClockAndPlace,
): ClockAndPlaceSlip => ({
  clockSeconds: (believed.instantMs - actual.instantMs) / 1000,
  latitudeDeg: believed.latitudeDeg - actual.latitudeDeg,
  longitudeDeg: wrap180(believed.longitudeDeg - actual.longitudeDeg),
});
