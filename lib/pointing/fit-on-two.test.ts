import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { separationDeg } from '../units/vector';
import { altitudeZeroThatAgrees, believedDirection } from './fit-on-two';
import type { Readings } from './pointing-model';

const between = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });
const apartDeg = (a: Readings, b: Readings, zeroDeg: number): number =>
  separationDeg(believedDirection(a, zeroDeg), believedDirection(b, zeroDeg));

describe('the altitude zero that makes two angles agree', () => {
  it('does so, and no smaller zero would, also below the horizon and past the zenith', () => {
    fc.assert(
      fc.property(
        between(100),
        between(100),
        fc.double({ min: 20, max: 340, noNaN: true }),
        between(30),
        (altitude1, altitude2, turnDeg, zeroDeg) => {
          const first = { azimuthDeg: 10, altitudeDeg: altitude1 };
          const second = { azimuthDeg: 10 + turnDeg, altitudeDeg: altitude2 };
          const starsDeg = apartDeg(first, second, zeroDeg);
          const found = altitudeZeroThatAgrees(starsDeg, first, second) ?? NaN;
          // Where the two zeros meet, the angle hardly depends on them: √10⁻¹⁶ radian is 6·10⁻⁷ degree.
          expect(Math.abs(found)).toBeLessThan(Math.abs(zeroDeg) + 1e-5);
          expect(Math.abs(apartDeg(first, second, found) - starsDeg)).toBeLessThan(1e-5);
        },
      ),
    );
  });

  // Readings at the horizon 90° apart are at their widest there; no zero makes them 100°.
  it('comes as close as it can where none does', () => {
    const horizon = [0, 90].map((azimuthDeg) => ({ azimuthDeg, altitudeDeg: 0 }));
    const [first, second] = horizon;
    if (first === undefined || second === undefined) throw new Error('two readings');
    expect(altitudeZeroThatAgrees(100, first, second)).toBeCloseTo(0, 10);
  });

  it('is anyone’s guess at equal azimuths', () => {
    const at = (altitudeDeg: number) => ({ azimuthDeg: 200, altitudeDeg });
    expect(altitudeZeroThatAgrees(30, at(20), at(50))).toBeNull();
  });
});
