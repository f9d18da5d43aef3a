import { tiltOf } from '../../levelling/head-slope';
import { legReaches, type LegReach } from '../../levelling/leg-to-move';
import {
  bubbleOf,
  legIndices,
  slopeOf,
  startOf,
  type LegIndex,
  type TripodSite,
} from '../../levelling/tripod';
import type { BubblePlace } from '../../levelling/vial';
import { degreesToRadians } from '../../units/angle';
import type { Random } from '../../variants/random';
import { one } from './words';

export const legNames = ['A', 'B', 'C'] as const;

/** A head to be levelled. Directions clockwise from the top of the drawing, degrees. */
export type LeaningHead = {
  site: TripodSite;
  tiltDeg: number;
  risesTowardsDeg: number;
  bubble: BubblePlace;
};

/** The common folding tripod of our kits. */
const usual = { footCircleRadiusMm: 450, splayDeg: 24 };

/**
 * A tripod with equal legs on ground whose slope makes the head rise by so much that way. Legs long
 * and free enough for anything that is asked; `legADeg` is where leg A stands, B and C follow clockwise.
 */
export function leaningHead(lean: {
  legADeg: number;
  tiltDeg: number;
  risesTowardsDeg: number;
  footCircleRadiusMm?: number;
  splayDeg?: number;
}): LeaningHead {
  const { legADeg, tiltDeg, risesTowardsDeg } = lean;
  const footCircleRadiusMm = lean.footCircleRadiusMm ?? usual.footCircleRadiusMm;
  const leg = (index: LegIndex) => {
    const azimuthDeg = (legADeg + 120 * index) % 360;
    const groundMm =
      footCircleRadiusMm *
      Math.tan(degreesToRadians(tiltDeg)) *
      Math.cos(degreesToRadians(azimuthDeg - risesTowardsDeg));
    return { azimuthDeg, groundMm, sinksMm: 0, startMm: 900 };
  };
  const site: TripodSite = {
    footCircleRadiusMm,
    splayDeg: lean.splayDeg ?? usual.splayDeg,
    legMinMm: 500,
    legMaxMm: 1300,
    armTurns: false,
    legs: [leg(0), leg(1), leg(2)],
    vial: { markAzimuthDeg: 0, zeroRightMm: 0, zeroUpMm: 0 },
  };
  return { site, tiltDeg, risesTowardsDeg, bubble: bubbleOf(site, startOf(site)) };
}

/** Legs at whole hours, the bubble between 3 and 9 mm off, at whole or half hours. */
export function drawHead(
  random: Random,
  /** Of the bubble from leg A, clockwise; by default anything. */
  fromLegADeg: number = 15 * random.integer(0, 23),
): LeaningHead {
  const legADeg = 30 * random.integer(0, 11);
  return leaningHead({
    legADeg,
    tiltDeg: random.integer(3, 8) / 2,
    risesTowardsDeg: (legADeg + fromLegADeg + 720) % 360,
  });
}

/** What each leg alone can do, the most helpful first. */
export const reachesOf = ({ site }: LeaningHead): LegReach[] =>
  legReaches(site, startOf(site), slopeOf(site, startOf(site)));

/** What is left of the tilt when one leg is changed by so many millimetres, degrees, and where it rises. */
export function afterChange({ site }: LeaningHead, leg: LegIndex, byMm: number) {
  const state = startOf(site);
  const [a, b, c] = legIndices.map((index) => ({
    ...state.legs[index],
    lengthMm: state.legs[index].lengthMm + (index === leg ? byMm : 0),
  }));
  if (a === undefined || b === undefined || c === undefined) throw new Error('a tripod has legs');
  const changed = { ...state, legs: [a, b, c] as const };
  return { ...tiltOf(slopeOf(site, changed)), bubble: bubbleOf(site, changed) };
}

/** Millimetres of one leg's length that tip this head by 1°: 1.5 r tan 1° / cos β. */
export const legMmPerDeg = ({ footCircleRadiusMm, splayDeg }: TripodSite): number =>
  (1.5 * footCircleRadiusMm * Math.tan(degreesToRadians(1))) / Math.cos(degreesToRadians(splayDeg));

/** A leg, and the two others in the order of the alphabet. */
export function legAndOthers(random: Random): { leg: LegIndex; others: [LegIndex, LegIndex] } {
  const leg = one(random, legIndices);
  return { leg, others: othersOf(leg) };
}

export function othersOf(leg: LegIndex): [LegIndex, LegIndex] {
  const others = { 0: [1, 2], 1: [0, 2], 2: [0, 1] } as const;
  const [first, second] = others[leg];
  return [first, second];
}
