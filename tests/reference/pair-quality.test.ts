import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { pairWorth } from '@/lib/pointing/pair-worth';
import { targetCount } from '@/lib/pointing/target-grid';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import data from './data/pair_quality.json';

const star = z.object({ az: z.number(), alt: z.number() });
const cases = z
  .array(
    z.object({
      star1: star,
      star2: star,
      centringArcmin: z.number(),
      altitudeZeroArcmin: z.number(),
      coneArcmin: z.number(),
      axisSkewArcmin: z.number(),
      separationDeg: z.number(),
      rmsArcminFixedZero: z.number(),
      rmsArcminSolvedZero: z.number(),
    }),
  )
  .parse(data.cases);

// Computed apart from this code with NumPy's pseudo-inverse over the same grid; the angles are
// printed to 10⁻⁴ degree and the results to 10⁻⁴ arcminute, hence the relative tolerance below.
describe('expected pointing error of twelve pairs (pair_quality.json)', () => {
  it('is reckoned over the same 533 directions', () => {
    expect(targetCount).toBe(533);
    expect(cases).toHaveLength(12);
  });

  it.each(cases.map((c, i) => [i, c] as const))('case %i', (_, c) => {
    const position = (s: typeof c.star1) => ({ azimuthDeg: s.az, altitudeDeg: s.alt });
    const [star1, star2] = [position(c.star1), position(c.star2)];
    const worth = (computer: 'fixed-zero' | 'solved-zero') =>
      pairWorth({ focalLengthMm: 500, apertureMm: 80, computer, ...c }, 30, star1, star2)
        .expectedErrorArcmin ?? NaN;
    const separation = separationDeg(
      directionFromAzAlt(star1.azimuthDeg, star1.altitudeDeg),
      directionFromAzAlt(star2.azimuthDeg, star2.altitudeDeg),
    );
    expect(Math.abs(separation - c.separationDeg)).toBeLessThan(1.5e-4);
    expect(Math.abs(worth('fixed-zero') / c.rmsArcminFixedZero - 1)).toBeLessThan(5e-5);
    expect(Math.abs(worth('solved-zero') / c.rmsArcminSolvedZero - 1)).toBeLessThan(5e-5);
  });
});
