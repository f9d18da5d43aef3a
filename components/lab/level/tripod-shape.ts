import {
  slopeOf,
  carriedMm,
  legIndices,
  type LegIndex,
  type TripodSite,
  type TripodState,
} from '@/lib/levelling/tripod';
import { degreesToRadians } from '@/lib/units/angle';

/*
 * A tripod on the page, seen from the south and a little above. One unit is 3 mm, as for every telescope
 * that is drawn here; only its height is drawn short. What leans is drawn as it leans.
 */

export type Point = { x: number; y: number };

const mmPerUnit = 3;
const seenFromDeg = 24;
/** The head is drawn at this share of its height. */
const shortened = 0.6;
const hipCircleMm = 75;
/** The upper part of a leg, which the lower part slides in. */
const upperPartShare = 0.58;

const [sinSeen, cosSeen] = [
  Math.sin(degreesToRadians(seenFromDeg)),
  Math.cos(degreesToRadians(seenFromDeg)),
];

/** East, north and up of the middle between the feet, millimetres → the page, y downward. */
export const onPage = (eastMm: number, northMm: number, upMm: number): Point => ({
  x: eastMm / mmPerUnit,
  y: -(northMm * sinSeen + upMm * cosSeen) / mmPerUnit,
});

export type LegShape = {
  leg: LegIndex;
  hip: Point;
  /** Where the lower part goes into the upper one, and the lock sits. */
  joint: Point;
  foot: Point;
  /** The ground's surface there, before any foot went in. */
  ground: Point;
};

export type TripodShape = {
  /** The farthest first, as they are to be drawn. */
  legs: readonly LegShape[];
  /** A place on the head's plane, and above it. */
  head: (eastMm: number, northMm: number, aboveMm: number) => Point;
  /** How the head leans along the page, degrees clockwise. */
  leansDeg: number;
};

export function tripodShape(site: TripodSite, state: TripodState): TripodShape {
  const { east, north } = slopeOf(site, state);
  const carried = legIndices.map((leg) => carriedMm(site, state, leg));
  const meanMm = (shortened * carried.reduce((sum, mm) => sum + mm, 0)) / carried.length;
  const head: TripodShape['head'] = (eastMm, northMm, aboveMm) =>
    onPage(
      // What stands upright on a leaning head leans with it.
      eastMm - east * aboveMm,
      northMm - north * aboveMm,
      meanMm + east * eastMm + north * northMm + aboveMm,
    );
  const legs = legIndices.map((leg): LegShape => {
    const { azimuthDeg, groundMm, sinksMm } = site.legs[leg];
    const { lengthMm, sunk } = state.legs[leg];
    const out = {
      east: Math.sin(degreesToRadians(azimuthDeg)),
      north: Math.cos(degreesToRadians(azimuthDeg)),
    };
    const at = (radiusMm: number) => [out.east * radiusMm, out.north * radiusMm] as const;
    const hip = head(...at(hipCircleMm), -15);
    const foot = onPage(...at(site.footCircleRadiusMm), groundMm - (sunk ? sinksMm : 0));
    const down = (upperPartShare * (site.legMinMm + site.legMaxMm)) / 2 / lengthMm;
    return {
      leg,
      hip,
      joint: { x: hip.x + down * (foot.x - hip.x), y: hip.y + down * (foot.y - hip.y) },
      foot,
      ground: onPage(...at(site.footCircleRadiusMm), groundMm),
    };
  });
  return {
    legs: legs.sort((a, b) => a.ground.y - b.ground.y),
    head,
    leansDeg: (-Math.atan(east) * 180) / Math.PI,
  };
}

/** A circle of the head, as a path. */
export function headCircle(shape: TripodShape, radiusMm: number, aboveMm: number): string {
  const points = Array.from({ length: 36 }, (_, i) => {
    const angle = (i * Math.PI) / 18;
    const { x, y } = shape.head(radiusMm * Math.sin(angle), radiusMm * Math.cos(angle), aboveMm);
    return `${x.toFixed(2)} ${y.toFixed(2)}`;
  });
  return `M${points.join(' L')} Z`;
}
