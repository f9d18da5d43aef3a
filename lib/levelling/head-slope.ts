import { degreesToRadians, radiansToDegrees, wrap360 } from '../units/angle';

/** How far the head climbs for each unit of way towards east and towards north; no unit. */
export type Slope = { east: number; north: number };

/** Off level by this much, and the side that stands higher, azimuth clockwise from north. */
export type Tilt = { tiltDeg: number; risesTowardsDeg: number };

/** Where a leg stands on the circle of feet, and how high it carries the head there. */
export type CarriedHeight = { azimuthDeg: number; heightMm: number };

/**
 * The slope of the plane that lies closest to the heights on a circle of feet; through three feet it
 * passes exactly. Least squares on east, north and a common height, by Cramer's rule. For three feet
 * 120° apart it is (2/3r) Σ h (sin ψ, cos ψ). Throws where the feet stand in a line.
 */
export function headSlope(footCircleRadiusMm: number, feet: readonly CarriedHeight[]): Slope {
  const n = feet.length;
  let [e, north, ee, nn, en, h, he, hn] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (const { azimuthDeg, heightMm } of feet) {
    const x = footCircleRadiusMm * Math.sin(degreesToRadians(azimuthDeg));
    const y = footCircleRadiusMm * Math.cos(degreesToRadians(azimuthDeg));
    e += x;
    north += y;
    ee += x * x;
    nn += y * y;
    en += x * y;
    h += heightMm;
    he += heightMm * x;
    hn += heightMm * y;
  }
  // About their middle, so that the common height drops out.
  const [sxx, syy, sxy] = [ee - (e * e) / n, nn - (north * north) / n, en - (e * north) / n];
  const [sxh, syh] = [he - (e * h) / n, hn - (north * h) / n];
  const determinant = sxx * syy - sxy * sxy;
  if (!(determinant > 1e-6 * footCircleRadiusMm ** 4))
    throw new RangeError('feet in a line carry no plane');
  return {
    east: (sxh * syy - syh * sxy) / determinant,
    north: (syh * sxx - sxh * sxy) / determinant,
  };
}

/** Tilt in [0°, 90°), azimuth in [0°, 360°); a level head is said to rise towards 0°. */
export function tiltOf({ east, north }: Slope): Tilt {
  return {
    tiltDeg: radiansToDegrees(Math.atan(Math.hypot(east, north))),
    risesTowardsDeg: wrap360(radiansToDegrees(Math.atan2(east, north))),
  };
}
