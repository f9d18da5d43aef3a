import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { headSlope, tiltOf } from '@/lib/levelling/head-slope';
import { bubblePlace } from '@/lib/levelling/vial';
import data from './data/tripod_planes.json';

const planes = z
  .array(
    z.object({
      footCircleRadiusMm: z.number(),
      feet: z.array(z.object({ azimuthDeg: z.number(), heightMm: z.number() })),
      slopeEast: z.number(),
      slopeNorth: z.number(),
      tiltDeg: z.number(),
      risesTowardsDeg: z.number(),
    }),
  )
  .length(30)
  .parse(data);

/**
 * Worked by hand from the triangle of feet, whose height is 1.5 r: one leg up by h tilts the head by
 * atan(h / 1.5 r). The first row is the design's own ("Levelling"), the others the same with a pocket
 * calculator.
 */
const oneLegUp = [
  { radiusMm: 450, upMm: 10, tiltDeg: 0.8488 },
  { radiusMm: 450, upMm: 1, tiltDeg: 0.0849 },
  { radiusMm: 600, upMm: 25, tiltDeg: 1.5911 },
  { radiusMm: 300, upMm: 45, tiltDeg: 5.7106 },
];

describe('the head of a tripod', () => {
  it.each(oneLegUp)('one leg of $radiusMm mm up by $upMm mm is $tiltDeg°', (row) => {
    const feet = [row.upMm, 0, 0].map((heightMm, leg) => ({ azimuthDeg: 120 * leg, heightMm }));
    expect(tiltOf(headSlope(row.radiusMm, feet)).tiltDeg).toBeCloseTo(row.tiltDeg, 4);
  });

  // NumPy's linalg.lstsq (SVD) on the whole system of east, north and height; see the data's README.
  it.each(planes.map((plane, i) => [i, plane] as const))(
    'case %i lies as a general least-squares solver lays a plane through its feet',
    (_, { footCircleRadiusMm, feet, ...solved }) => {
      const slope = headSlope(footCircleRadiusMm, feet);
      // Printed to ten decimals of slope, eight of tilt and six of azimuth, so that rounding in
      // printing is far above that of either solver (cases with feet nearly in a line lose 10⁻¹²).
      expect(Math.abs(slope.east - solved.slopeEast)).toBeLessThan(0.501e-10);
      expect(Math.abs(slope.north - solved.slopeNorth)).toBeLessThan(0.501e-10);
      const { tiltDeg, risesTowardsDeg } = tiltOf(slope);
      expect(Math.abs(tiltDeg - solved.tiltDeg)).toBeLessThan(0.501e-8);
      expect(Math.abs(risesTowardsDeg - solved.risesTowardsDeg)).toBeLessThan(0.501e-6);
    },
  );
});

describe('the bubble of a circular vial', () => {
  // Of a spherical cap: it rests where the glass is level, ρ sin θ from its middle; 2 mm a degree.
  it.each([
    { tiltDeg: 0.15, runMm: 0.3 },
    { tiltDeg: 1, runMm: 1.9999 },
    { tiltDeg: 3, runMm: 5.9973 },
  ])('runs $runMm mm for $tiltDeg°', ({ tiltDeg, runMm }) => {
    const vial = { markAzimuthDeg: 0, zeroRightMm: 0, zeroUpMm: 0 };
    const { eastMm, northMm } = bubblePlace({ tiltDeg, risesTowardsDeg: 210 }, vial);
    expect(Math.hypot(eastMm, northMm)).toBeCloseTo(runMm, 4);
    expect(eastMm).toBeCloseTo(-runMm / 2, 3);
  });
});
