import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balanceShiftMm, togetherAsOne } from './centre-of-mass';
import { altitudeStopsDeg, creepFrom } from './creep';
import { bestForwardMm, worstTorque } from './holding';
import { clampedAt, torqueNm, type ClampedTube } from './torque';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const mass = fc.record({
  massKg: within(0.05, 5),
  alongMm: within(-150, 700),
  aboveAxisMm: within(-80, 80),
});
const clamped: fc.Arbitrary<ClampedTube> = fc.record({
  massKg: within(0.5, 6),
  forwardMm: within(-80, 80),
  aboveMm: within(-40, 40),
});
const range = fc
  .tuple(within(0, 40), within(10, 50))
  .map(([lowDeg, width]) => ({ lowDeg, highDeg: lowDeg + width }));

describe('the balance point', () => {
  it('stays where it is when something is put on at it', () => {
    fc.assert(
      fc.property(fc.array(mass, { minLength: 1, maxLength: 6 }), within(0.01, 3), (masses, kg) => {
        const before = togetherAsOne(masses);
        const after = togetherAsOne([...masses, { ...before, massKg: kg }]);
        expect(after.alongMm).toBeCloseTo(before.alongMm, 6);
        expect(after.aboveAxisMm).toBeCloseTo(before.aboveAxisMm, 6);
      }),
    );
  });

  it('moves by m (x − x_cg) / (M + m) when something is put on elsewhere', () => {
    fc.assert(
      fc.property(fc.array(mass, { minLength: 1, maxLength: 6 }), mass, (masses, added) => {
        const before = togetherAsOne(masses);
        const after = togetherAsOne([...masses, added]);
        expect(after.alongMm - before.alongMm).toBeCloseTo(balanceShiftMm(before, added), 6);
      }),
    );
  });

  it('does not hang on the order in which parts are put on', () => {
    fc.assert(
      fc.property(fc.array(mass, { minLength: 2, maxLength: 6 }), (masses) => {
        const one = togetherAsOne(masses);
        const other = togetherAsOne([...masses].reverse());
        expect(other.alongMm).toBeCloseTo(one.alongMm, 6);
      }),
    );
  });

  it('does not exist for nothing', () => {
    expect(() => togetherAsOne([])).toThrow(RangeError);
  });
});

describe('the torque', () => {
  it('is nothing at altitude 0 once the clamp grips at the balance point', () => {
    fc.assert(
      fc.property(mass, (tube) => {
        expect(torqueNm(clampedAt(tube, tube.alongMm), 0)).toBe(0);
      }),
    );
  });

  it('pulls the front down when the tube is slid forward, and the back when it is slid back', () => {
    const tube = { massKg: 2, alongMm: 250, aboveAxisMm: 0 };
    // The clamp nearer the back leaves more of the tube in front of it.
    expect(torqueNm(clampedAt(tube, 270), 0)).toBeGreaterThan(0);
    expect(torqueNm(clampedAt(tube, 230), 0)).toBeLessThan(0);
  });

  it('turns round when the tube is mirrored front to back and held level', () => {
    fc.assert(
      fc.property(clamped, (tube) => {
        const mirrored = { ...tube, forwardMm: -tube.forwardMm };
        expect(torqueNm(mirrored, 0)).toBeCloseTo(-torqueNm(tube, 0), 9);
      }),
    );
  });

  it('is the same for the mirror image raised from the other side', () => {
    fc.assert(
      fc.property(clamped, within(0, 180), (tube, altitudeDeg) => {
        const mirrored = { ...tube, forwardMm: -tube.forwardMm };
        expect(torqueNm(mirrored, 180 - altitudeDeg)).toBeCloseTo(torqueNm(tube, altitudeDeg), 9);
      }),
    );
  });
});

describe('the worst torque of a range', () => {
  it('is as large as any found by trying, and is reached', () => {
    fc.assert(
      fc.property(clamped, range, (tube, { lowDeg, highDeg }) => {
        const worst = worstTorque(tube, { lowDeg, highDeg });
        const tried = Array.from({ length: 501 }, (_, i) =>
          Math.abs(torqueNm(tube, lowDeg + ((highDeg - lowDeg) * i) / 500)),
        );
        const most = Math.max(...tried);
        expect(Math.abs(worst.torqueNm)).toBeGreaterThanOrEqual(most - 1e-12);
        // Between two tries, at most 0.05° from one, a cosine rises by less than a millionth.
        expect(Math.abs(worst.torqueNm)).toBeLessThanOrEqual(
          most + 1e-6 * tube.massKg * 10 * Math.hypot(tube.forwardMm, tube.aboveMm),
        );
        expect(worst.altitudeDeg).toBeGreaterThanOrEqual(lowDeg);
        expect(worst.altitudeDeg).toBeLessThanOrEqual(highDeg);
      }),
    );
  });

  it('is least at the best place, wherever else the tube is slid', () => {
    fc.assert(
      fc.property(clamped, range, (tube, altitudes) => {
        const best = { ...tube, forwardMm: bestForwardMm(tube.aboveMm, altitudes) };
        expect(Math.abs(worstTorque(best, altitudes).torqueNm)).toBeLessThanOrEqual(
          Math.abs(worstTorque(tube, altitudes).torqueNm) + 1e-12,
        );
      }),
    );
  });

  it('at the best place pulls equally hard the two ways at the ends of the range', () => {
    const tube = {
      massKg: 2.5,
      aboveMm: 16,
      forwardMm: bestForwardMm(16, { lowDeg: 30, highDeg: 70 }),
    };
    expect(torqueNm(tube, 30)).toBeCloseTo(-torqueNm(tube, 70), 12);
    expect(torqueNm(tube, 50)).toBeCloseTo(0, 12);
  });
});

describe('a tube that is let go', () => {
  const clutch = within(0.05, 0.6);

  it('holds exactly when its weight pulls no harder than the clutch', () => {
    fc.assert(
      fc.property(clamped, within(0, 90), clutch, (tube, altitudeDeg, holdNm) => {
        const { moves, restDeg } = creepFrom(tube, altitudeDeg, holdNm);
        expect(moves === 'holds').toBe(Math.abs(torqueNm(tube, altitudeDeg)) <= holdNm);
        if (moves === 'holds') expect(restDeg).toBe(altitudeDeg);
        if (moves === 'front') expect(restDeg).toBeLessThan(altitudeDeg);
        if (moves === 'back') expect(restDeg).toBeGreaterThan(altitudeDeg);
      }),
    );
  });

  it('comes to rest at a stop or where its weight and the clutch are even, and not before', () => {
    fc.assert(
      fc.property(clamped, within(0, 90), clutch, (tube, altitudeDeg, holdNm) => {
        const { moves, restDeg } = creepFrom(tube, altitudeDeg, holdNm);
        fc.pre(moves !== 'holds');
        const { lowest, highest } = altitudeStopsDeg;
        if (restDeg !== lowest && restDeg !== highest)
          expect(Math.abs(torqueNm(tube, restDeg))).toBeCloseTo(holdNm, 9);
        for (let part = 0; part < 1; part += 0.05) {
          const onTheWay = torqueNm(tube, altitudeDeg + (restDeg - altitudeDeg) * part);
          expect(moves === 'front' ? onTheWay : -onTheWay).toBeGreaterThan(holdNm - 1e-9);
        }
      }),
    );
  });

  it('is never cured by more weight at its balance point', () => {
    // More weight at the balance point pulls harder wherever the clamp is off it, and nowhere else.
    fc.assert(
      fc.property(mass, within(0.1, 2), within(-60, 60), (tube, kg, off) => {
        const heavier = togetherAsOne([tube, { ...tube, massKg: kg }]);
        const [light, heavy] = [tube, heavier].map((one) =>
          Math.abs(torqueNm(clampedAt(one, tube.alongMm + off), 0)),
        );
        expect(heavy ?? NaN).toBeGreaterThanOrEqual((light ?? NaN) - 1e-12);
      }),
    );
  });
});
