import { degreesToRadians } from '../units/angle';
import type { Slope, Tilt } from './head-slope';

/**
 * The circular vial on the head. Its glass is a cap of a sphere, so the bubble runs the same way for
 * each degree: 2 mm a degree is a radius of 2 · 180/π = 114.6 mm (design, "Levelling"). The other sizes
 * are those of a common small vial, from memory.
 */
export const vialMm = {
  curvatureRadius: (2 * 180) / Math.PI,
  glassRadius: 12,
  ringRadius: 3.5,
  bubbleRadius: 2.5,
} as const;

/** The bubble's middle can come no closer to the wall. */
const farthestMm = vialMm.glassRadius - vialMm.bubbleRadius;

/**
 * What the vial can show: an eye places a bubble within a ring to about a third of a millimetre
 * (common practice, no source), which is 0.15°.
 */
export const vialShowsDeg = 0.15;

/** How a vial sits: which way its mark points, and where its bubble comes to rest on a level head. */
export type Vial = {
  /** Azimuth of the mark on its rim. */
  markAzimuthDeg: number;
  /** Off the middle of the ring, with the mark upward; nought for a vial that is true. */
  zeroRightMm: number;
  zeroUpMm: number;
};

/** The bubble's middle from the ring's, seen from above. */
export type BubblePlace = { eastMm: number; northMm: number; atTheWall: boolean };

/** Where the bubble comes to rest: ρ sin(tilt) towards the high side, and beside it by the vial's own fault. */
export function bubblePlace({ tiltDeg, risesTowardsDeg }: Tilt, vial: Vial): BubblePlace {
  const run = vialMm.curvatureRadius * Math.sin(degreesToRadians(tiltDeg));
  const high = degreesToRadians(risesTowardsDeg);
  const mark = degreesToRadians(vial.markAzimuthDeg);
  const east =
    run * Math.sin(high) + vial.zeroRightMm * Math.cos(mark) + vial.zeroUpMm * Math.sin(mark);
  const north =
    run * Math.cos(high) - vial.zeroRightMm * Math.sin(mark) + vial.zeroUpMm * Math.cos(mark);
  const distance = Math.hypot(east, north);
  const atTheWall = distance > farthestMm;
  const kept = atTheWall ? farthestMm / distance : 1;
  return { eastMm: east * kept, northMm: north * kept, atTheWall };
}

/** The slope that a bubble seems to tell of where the vial's mark is taken to point north. */
export function slopeReadUnturned({ east, north }: Slope, markAzimuthDeg: number): Slope {
  const turn = degreesToRadians(markAzimuthDeg);
  return {
    east: east * Math.cos(turn) - north * Math.sin(turn),
    north: east * Math.sin(turn) + north * Math.cos(turn),
  };
}
