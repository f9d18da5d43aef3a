import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degreesToRadians } from '../units/angle';
import { firstSlew, takenAsLevel, tiltConsequences } from './tilt-consequences';

const azimuth = fc.double({ min: 0, max: 359.9, noNaN: true });
const altitude = fc.double({ min: 15, max: 65, noNaN: true });
const place = fc.record({ azimuthDeg: azimuth, altitudeDeg: altitude });
const smallTilt = fc.record({
  tiltDeg: fc.double({ min: 0, max: 1.5, noNaN: true }),
  risesTowardsDeg: azimuth,
});
const cosFrom = (a: number, b: number) => Math.cos(degreesToRadians(a - b));
const sinFrom = (a: number, b: number) => Math.sin(degreesToRadians(a - b));

describe('a first slew on a base off level', () => {
  it('lands high on the side that stands high, low on the other, beside across', () => {
    const tilt = { tiltDeg: 0.8, risesTowardsDeg: 60 };
    const up = (azimuthDeg: number) => firstSlew(tilt, { azimuthDeg, altitudeDeg: 40 }).upArcmin;
    expect(up(60)).toBeCloseTo(48, 6);
    expect(up(240)).toBeCloseTo(-48, 6);
    // Of second order only: t²/2 · tan a is 0.28′.
    expect(Math.abs(up(150))).toBeLessThan(0.3);
  });

  it('misses by t cos(A − A_t) in altitude and t sin(A − A_t) tan a in azimuth', () => {
    // Design, "Levelling", to first order; the rest is of the order t² tan² a, 0.16° for 1.5° at 65°.
    fc.assert(
      fc.property(smallTilt, place, (tilt, star) => {
        const { upArcmin, clockwiseArcmin } = firstSlew(tilt, star);
        const [t, a] = [60 * tilt.tiltDeg, degreesToRadians(star.altitudeDeg)];
        const second = t * degreesToRadians(tilt.tiltDeg) * (1 + Math.tan(a) ** 2);
        expect(
          Math.abs(upArcmin - t * cosFrom(star.azimuthDeg, tilt.risesTowardsDeg)),
        ).toBeLessThanOrEqual(second + 1e-9);
        // On the sky an azimuth counts cos a.
        expect(
          Math.abs(
            clockwiseArcmin - t * sinFrom(star.azimuthDeg, tilt.risesTowardsDeg) * Math.sin(a),
          ),
        ).toBeLessThanOrEqual(second + 1e-9);
      }),
    );
  });

  it('never misses by more than the tilt itself', () => {
    fc.assert(
      fc.property(smallTilt, place, (tilt, star) => {
        expect(firstSlew(tilt, star).missArcmin).toBeLessThanOrEqual(60 * tilt.tiltDeg + 1e-9);
      }),
    );
  });
});

describe('a computer that takes the base as level', () => {
  it('points right where it was set', () => {
    fc.assert(
      fc.property(smallTilt, place, (tilt, star) => {
        expect(takenAsLevel(tilt, star, star).missArcmin).toBeLessThan(1e-6);
      }),
    );
  });

  it('is off elsewhere in altitude by what is wrong there less what was wrong where it was set', () => {
    fc.assert(
      fc.property(smallTilt, place, place, (tilt, setOn, target) => {
        const t = 60 * tilt.tiltDeg;
        const expected =
          t *
          (cosFrom(target.azimuthDeg, tilt.risesTowardsDeg) -
            cosFrom(setOn.azimuthDeg, tilt.risesTowardsDeg));
        // Two slews of second order, t² tan a each, and the turn of the circle times the slope.
        const second = 8 * t * degreesToRadians(tilt.tiltDeg) * 4.6;
        expect(Math.abs(takenAsLevel(tilt, setOn, target).upArcmin - expected)).toBeLessThanOrEqual(
          second + 1e-9,
        );
      }),
    );
  });
});

describe('what a tilt does anywhere on the sky', () => {
  const stars = [
    { azimuthDeg: 100, altitudeDeg: 45 },
    { azimuthDeg: 190, altitudeDeg: 35 },
  ] as const;

  it('1° off level is gone to under 0.001′ after a fit on two stars', () => {
    // Design, "Which slip bites where".
    const { firstSlewsArcmin, afterTwoStarsArcmin, takenAsLevelArcmin } = tiltConsequences(
      { tiltDeg: 1, risesTowardsDeg: 70 },
      ...stars,
    );
    expect(afterTwoStarsArcmin).toBeLessThan(0.001);
    expect(firstSlewsArcmin).toBeGreaterThan(59);
    expect(firstSlewsArcmin).toBeLessThanOrEqual(60);
    // On the far side the altitude is wrong by nearly twice the tilt.
    expect(takenAsLevelArcmin).toBeGreaterThan(90);
  });

  it('beyond 5° the computer refuses to believe in such a base', () => {
    expect(
      tiltConsequences({ tiltDeg: 5.2, risesTowardsDeg: 70 }, ...stars).afterTwoStarsArcmin,
    ).toBeNull();
  });

  it('a level base does nothing', () => {
    const level = tiltConsequences({ tiltDeg: 0, risesTowardsDeg: 0 }, ...stars);
    expect(level.firstSlewsArcmin).toBeLessThan(1e-6);
    expect(level.takenAsLevelArcmin).toBeLessThan(1e-6);
  });
});
