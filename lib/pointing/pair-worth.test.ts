import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { directionFromAzAlt, separationDeg } from '../units/vector';
import { expectedSquareAt, pairErrorModel } from './pair-error-model';
import { pairWorth } from './pair-worth';
import { pairWorthDirect } from './pair-worth-direct';
import { pairConditionNumber } from './pair-condition';
import { fieldRadiusArcmin } from './field-radius';
import { errorMap } from './error-map';
import type { Telescope } from './scenario';
import { randomFrom } from '../variants/random';
import { targetAzimuthDeg, targetBands } from './target-grid';
import type { StarPosition } from './star-position';

const wren: Telescope = {
  focalLengthMm: 500,
  apertureMm: 80,
  computer: 'solved-zero',
  centringArcmin: 7.5,
  altitudeZeroArcmin: 30,
  coneArcmin: 8,
  axisSkewArcmin: 4,
};
const fixed: Telescope = { ...wren, computer: 'fixed-zero', altitudeZeroArcmin: 10 };
const radius = fieldRadiusArcmin(wren, { focalLengthMm: 9, apparentFieldDeg: 50 });

const position = fc.record({
  azimuthDeg: fc.double({ min: 0, max: 360, noNaN: true }),
  altitudeDeg: fc.double({ min: 5, max: 85, noNaN: true }),
});
const telescope = fc.record({
  focalLengthMm: fc.constant(500),
  apertureMm: fc.constant(80),
  computer: fc.constantFrom('fixed-zero' as const, 'solved-zero' as const),
  centringArcmin: fc.double({ min: 0.5, max: 20, noNaN: true }),
  altitudeZeroArcmin: fc.double({ min: 0, max: 60, noNaN: true }),
  coneArcmin: fc.double({ min: 0, max: 30, noNaN: true }),
  axisSkewArcmin: fc.double({ min: 0, max: 30, noNaN: true }),
});
const apart = (a: StarPosition, b: StarPosition) =>
  separationDeg(
    directionFromAzAlt(a.azimuthDeg, a.altitudeDeg),
    directionFromAzAlt(b.azimuthDeg, b.altitudeDeg),
  );
const turned = (s: StarPosition, byDeg: number) => ({
  ...s,
  azimuthDeg: (s.azimuthDeg + byDeg) % 360,
});

describe('the worth of a pair', () => {
  it('is the same from the folded grid as from the sum over all targets', () => {
    fc.assert(
      fc.property(telescope, position, position, (scope, a, b) => {
        const direct = pairWorthDirect(scope, radius, a, b);
        // Within a hair of the limit rounding may decide either way.
        fc.pre(Math.abs(direct.conditionNumber / 1e4 - 1) > 1e-3);
        const folded = pairWorth(scope, radius, a, b);
        if (direct.expectedErrorArcmin === null) {
          expect(folded).toMatchObject({ expectedErrorArcmin: null, hitRate: 0 });
          return;
        }
        // Normal equations square the condition number: 10⁸ of 10¹⁶ at the worst.
        const relative = 1e-11 + 1e-15 * direct.conditionNumber ** 2;
        expect(
          Math.abs((folded.expectedErrorArcmin ?? NaN) / direct.expectedErrorArcmin - 1),
        ).toBeLessThan(relative);
        expect(Math.abs(folded.hitRate - direct.hitRate)).toBeLessThan(relative);
      }),
      { numRuns: 120 },
    );
  }, 60_000);

  it('does not change when both stars are turned in azimuth by a whole number of grid steps', () => {
    fc.assert(
      fc.property(
        telescope,
        position,
        position,
        fc.integer({ min: 1, max: 359 }),
        (scope, a, b, by) => {
          fc.pre(apart(a, b) > 1 && pairConditionNumber(scope.computer, a, b) < 1e3);
          const before = pairWorth(scope, radius, a, b);
          const after = pairWorth(scope, radius, turned(a, by), turned(b, by));
          const ratio = (after.expectedErrorArcmin ?? NaN) / (before.expectedErrorArcmin ?? NaN);
          expect(Math.abs(ratio - 1)).toBeLessThan(1e-8);
        },
      ),
    );
  });

  it('has a hit rate that turning both stars moves by less than half a point (the grid is finite)', () => {
    fc.assert(
      fc.property(position, position, fc.integer({ min: 1, max: 359 }), (a, b, by) => {
        const before = pairWorth(wren, radius, a, b).hitRate;
        const after = pairWorth(wren, radius, turned(a, by), turned(b, by)).hitRate;
        expect(Math.abs(after - before)).toBeLessThan(0.005);
      }),
    );
  });

  it('does not depend on which star comes first', () => {
    fc.assert(
      fc.property(telescope, position, position, (scope, a, b) => {
        fc.pre(pairConditionNumber(scope.computer, a, b) < 1e3);
        const one = pairWorth(scope, radius, a, b);
        const other = pairWorth(scope, radius, b, a);
        expect(other.hitRate).toBeCloseTo(one.hitRate, 9);
        expect((other.expectedErrorArcmin ?? NaN) / (one.expectedErrorArcmin ?? NaN)).toBeCloseTo(
          1,
          8,
        );
      }),
    );
  });

  it('has a hit rate between nothing and all, growing with the field', () => {
    fc.assert(
      fc.property(telescope, position, position, (scope, a, b) => {
        const narrow = pairWorth(scope, 5, a, b).hitRate;
        const wide = pairWorth(scope, 50, a, b).hitRate;
        expect(narrow).toBeGreaterThanOrEqual(0);
        expect(wide).toBeLessThanOrEqual(1);
        expect(wide).toBeGreaterThanOrEqual(narrow);
      }),
    );
  });

  it('follows the closed form σ²(½ + 2/sin²θ) when centring alone is wrong and the zero is known', () => {
    // Rotation variance of two vector observations: Shuster & Oh 1981 (QUEST), per-axis σ. A
    // rotation w moves a target by w less its part along the target, so the mean square over the
    // grid lies between the closed form less the largest variance and the closed form itself; over
    // the three axes taken as targets it is exactly twice the trace.
    const noise: Telescope = { ...fixed, altitudeZeroArcmin: 0, coneArcmin: 0, axisSkewArcmin: 0 };
    for (const theta of [5, 20, 45, 60, 90, 120, 150, 175]) {
      const model = pairErrorModel(
        noise,
        { azimuthDeg: 77 - theta / 2, altitudeDeg: 0 },
        { azimuthDeg: 77 + theta / 2, altitudeDeg: 0 },
      );
      if (model === null) throw new Error('undetermined');
      const trace = model.rotation[0] + model.rotation[1] + model.rotation[2];
      const sigma2 = ((noise.centringArcmin / 60) * (Math.PI / 180)) ** 2;
      const closed = sigma2 * (0.5 + 2 / Math.sin((theta * Math.PI) / 180) ** 2);
      expect(trace / closed).toBeCloseTo(1, 9);
      const overAxes = [
        { azimuthDeg: 90, altitudeDeg: 0 },
        { azimuthDeg: 0, altitudeDeg: 0 },
        { azimuthDeg: 0, altitudeDeg: 90 },
      ].reduce((sum, axis) => sum + expectedSquareAt(model, axis), 0);
      expect(overAxes / closed).toBeCloseTo(2, 9);
    }
  });

  it('follows the closed form wherever the two stars stand', () => {
    const noise: Telescope = { ...fixed, altitudeZeroArcmin: 0, coneArcmin: 0, axisSkewArcmin: 0 };
    fc.assert(
      fc.property(position, position, (a, b) => {
        const sin = Math.sin((apart(a, b) * Math.PI) / 180);
        fc.pre(Math.abs(sin) > 0.02);
        const model = pairErrorModel(noise, a, b);
        if (model === null) throw new Error('undetermined');
        const sigma2 = ((noise.centringArcmin / 60) * (Math.PI / 180)) ** 2;
        const trace = model.rotation[0] + model.rotation[1] + model.rotation[2];
        expect(trace / (sigma2 * (0.5 + 2 / sin ** 2))).toBeCloseTo(1, 8);
      }),
    );
  });

  it('is undetermined at equal azimuths when the zero is solved for, not when it is known', () => {
    const low = { azimuthDeg: 130, altitudeDeg: 25 };
    const high = { azimuthDeg: 130, altitudeDeg: 60 };
    const worth = pairWorth(wren, radius, low, high);
    expect(worth).toMatchObject({ expectedErrorArcmin: null, hitRate: 0 });
    expect(worth.conditionNumber).toBeGreaterThan(1e4);
    expect(pairWorth(fixed, radius, low, high).hitRate).toBeGreaterThan(0.3);
  });

  it('is undetermined for one and the same direction with either computer', () => {
    const star = { azimuthDeg: 40, altitudeDeg: 40 };
    expect(pairWorth(wren, radius, star, star).expectedErrorArcmin).toBeNull();
    expect(pairWorth(fixed, radius, star, star).expectedErrorArcmin).toBeNull();
  });

  it('turns undetermined exactly where the condition number passes 10⁴', () => {
    for (const scope of [wren, fixed]) {
      for (const gapArcsec of [5, 10, 15, 18, 20, 21, 22, 25, 35, 40, 41, 42, 45, 60]) {
        const a = { azimuthDeg: 100, altitudeDeg: 30 };
        const b = { azimuthDeg: 100 + gapArcsec / 3600 / Math.cos(Math.PI / 6), altitudeDeg: 30 };
        const direct = pairWorthDirect(scope, radius, a, b);
        expect(pairWorth(scope, radius, a, b).expectedErrorArcmin === null).toBe(
          direct.conditionNumber > 1e4,
        );
      }
    }
  });
});

describe('the hit rate', () => {
  it('agrees with throwing dice in the linear model, closely wherever it is high', () => {
    // 1 − exp(−r²/E|Δ|²) takes the miss as equally wide both ways. A miss along one line alone lands
    // within r more often, by up to 16.5 points at r²/E|Δ|² = 0.2 (erf √(ρ/2) against 1 − e^−ρ): so
    // the formula errs low, and only for poor pairs. Measured: within one point above 0.8, up to
    // eight points low below.
    const random = randomFrom('thrown hit rates').next;
    const pairs: [StarPosition, StarPosition][] = [
      [
        { azimuthDeg: 40, altitudeDeg: 35 },
        { azimuthDeg: 130, altitudeDeg: 45 },
      ],
      [
        { azimuthDeg: 200, altitudeDeg: 25 },
        { azimuthDeg: 240, altitudeDeg: 60 },
      ],
      [
        { azimuthDeg: 300, altitudeDeg: 50 },
        { azimuthDeg: 335, altitudeDeg: 30 },
      ],
      [
        { azimuthDeg: 10, altitudeDeg: 30 },
        { azimuthDeg: 170, altitudeDeg: 30 },
      ],
    ];
    for (const scope of [wren, fixed]) {
      for (const [a, b] of pairs) {
        const rate = pairWorth(scope, radius, a, b).hitRate;
        const low = thrownHitRate(scope, a, b, random) - rate;
        expect(low).toBeGreaterThan(-0.02);
        expect(low).toBeLessThan(rate > 0.8 ? 0.02 : 0.1);
      }
    }
  }, 30_000);
});

describe('the error map', () => {
  it('covers the sky above the horizon and has its least errors about the stars of a good pair', () => {
    const stars = [
      { azimuthDeg: 40, altitudeDeg: 35 },
      { azimuthDeg: 130, altitudeDeg: 45 },
    ] as const;
    const cells = errorMap({ stars, telescope: wren });
    expect(cells.length).toBeGreaterThan(700);
    const near = cells.filter((c) => apart(c, stars[0]) < 15);
    const far = cells.filter((c) => apart(c, stars[0]) > 60 && apart(c, stars[1]) > 60);
    const mean = (of: typeof cells) => of.reduce((s, c) => s + c.errorArcmin, 0) / of.length;
    expect(mean(near)).toBeLessThan(mean(far));
  });

  it('is empty for an undetermined pair', () => {
    const star = { azimuthDeg: 40, altitudeDeg: 35 };
    expect(errorMap({ stars: [star, { ...star, altitudeDeg: 60 }], telescope: wren })).toEqual([]);
  });
});

describe('the field radius', () => {
  it('of a 9 mm eyepiece with 50° apparent field at 500 mm is 27 arcminutes', () => {
    expect(radius).toBeCloseTo(27, 10);
  });
});

/**
 * Draws the mount's errors, solves the two stars' readings for them by Gaussian elimination (four
 * unknowns) or least squares (three), and counts the targets that land within the field.
 */
function thrownHitRate(
  scope: Telescope,
  a: StarPosition,
  b: StarPosition,
  random: () => number,
): number {
  const gauss = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const solves = scope.computer === 'solved-zero';
  const rad = (deg: number) => (deg * Math.PI) / 180;
  // Effects on (cross-azimuth, altitude) of turning the base about east, north, up, and of the zero.
  const rows = (s: StarPosition) => {
    const [A, h] = [rad(s.azimuthDeg), rad(s.altitudeDeg)];
    return [
      [Math.sin(h) * Math.sin(A), Math.sin(h) * Math.cos(A), -Math.cos(h), 0],
      [Math.cos(A), -Math.sin(A), 0, 1],
    ].map((row) => (solves ? row : row.slice(0, 3)));
  };
  let hits = 0;
  let count = 0;
  for (let throwNumber = 0; throwNumber < 3000; throwNumber++) {
    const zero = gauss() * scope.altitudeZeroArcmin;
    const cone = gauss() * scope.coneArcmin;
    const skew = gauss() * scope.axisSkewArcmin;
    const mount = (s: StarPosition) => [cone + skew * Math.sin(rad(s.altitudeDeg)), zero];
    const readings = [a, b].flatMap((s) => mount(s).map((m) => m + gauss() * scope.centringArcmin));
    const w = leastSquares([...rows(a), ...rows(b)], readings);
    for (let i = 0; i < 4; i++) {
      const band = targetBands[Math.floor(random() * targetBands.length)];
      if (!band) throw new Error('no band');
      // Bands are drawn evenly and then kept in proportion to their targets.
      if (random() > band.count / 66) continue;
      const target = {
        azimuthDeg: targetAzimuthDeg(band, Math.floor(random() * band.count)),
        altitudeDeg: band.altitudeDeg,
      };
      const truth = mount(target);
      const miss = rows(target).map(
        (row, k) => row.reduce((sum, x, j) => sum + x * (w[j] ?? 0), 0) - (truth[k] ?? 0),
      );
      count++;
      if (Math.hypot(...miss) < radius) hits++;
    }
  }
  return hits / count;
}

/** Normal equations and Gauss–Jordan elimination. */
function leastSquares(m: number[][], y: number[]): number[] {
  const n = m[0]?.length ?? 0;
  const system = Array.from({ length: n }, (_, i) => [
    ...Array.from({ length: n }, (_unused, j) =>
      m.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0),
    ),
    m.reduce((sum, row, k) => sum + (row[i] ?? 0) * (y[k] ?? 0), 0),
  ]);
  for (let i = 0; i < n; i++) {
    const pivot = system
      .slice(i)
      .reduce((best, row) => (Math.abs(row[i] ?? 0) > Math.abs(best[i] ?? 0) ? row : best));
    system.splice(system.indexOf(pivot), 1);
    system.splice(i, 0, pivot);
    for (const row of system) {
      if (row === pivot) continue;
      const factor = (row[i] ?? 0) / (pivot[i] ?? 1);
      for (let j = i; j <= n; j++) row[j] = (row[j] ?? 0) - factor * (pivot[j] ?? 0);
    }
  }
  return system.map((row, i) => (row[n] ?? 0) / (row[i] ?? 1));
}
