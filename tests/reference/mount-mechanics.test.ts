import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { mountDirection, readingsOf } from '@/lib/pointing/mount';
import data from './data/mount_mechanics.json';

const cases = z
  .array(
    z
      .object({
        azimuthReadingDeg: z.number(),
        altitudeReadingDeg: z.number(),
        altitudeZeroArcmin: z.number(),
        coneArcmin: z.number(),
        axisSkewArcmin: z.number(),
        direction: z.tuple([z.number(), z.number(), z.number()]),
      })
      .transform((c) => ({
        readings: { azimuthDeg: c.azimuthReadingDeg, altitudeDeg: c.altitudeReadingDeg },
        errors: {
          altitudeZeroDeg: c.altitudeZeroArcmin / 60,
          coneDeg: c.coneArcmin / 60,
          axisSkewDeg: c.axisSkewArcmin / 60,
        },
        direction: c.direction,
      })),
  )
  .length(12)
  .parse(data);

// Computed apart from this code with NumPy, three turns one after the other; errors up to 1°.
describe('mechanics of the mount (mount_mechanics.json)', () => {
  it.each(cases.map((c, i) => [i, c] as const))(
    'case %i: readings give the direction',
    (_, { readings, errors, direction }) => {
      // The directions are printed to nine decimals.
      mountDirection(readings, errors).forEach((value, i) => {
        expect(Math.abs(value - (direction[i] ?? NaN))).toBeLessThan(0.5001e-9);
      });
    },
  );

  it.each(cases.map((c, i) => [i, c] as const))(
    'case %i: the direction gives the readings',
    (_, { readings, errors, direction }) => {
      const back = readingsOf(direction, errors);
      // 10⁻⁹ of a direction is 6·10⁻⁸ degree, in azimuth more by 1/cos a: 3.1 at 71°.
      expect(Math.abs((back?.azimuthDeg ?? NaN) - readings.azimuthDeg)).toBeLessThan(2e-7);
      expect(Math.abs((back?.altitudeDeg ?? NaN) - readings.altitudeDeg)).toBeLessThan(1.5e-7);
    },
  );
});
