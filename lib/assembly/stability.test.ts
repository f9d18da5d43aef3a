import fc from 'fast-check';
import { Matrix3, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { caughtUpToMm, fingerMm, gapMm, squeezeN } from './pinch';
import {
  asWeightKg,
  centreOf,
  feetOf,
  footCircleMm,
  hubHeightMm,
  plumbPoint,
  stabilityOf,
  tippingPushN,
  type LoadedStand,
} from './stability';

const plain: LoadedStand = {
  legLengthMm: 1000,
  splayDeg: 30,
  footBearingsDeg: [0, 120, 240] as const,
  tubeMassKg: 0,
  armBearingDeg: 0,
  mountMassKg: 3,
  hungMassKg: 0,
  groundSlopeDeg: 0,
  fallsTowardsDeg: 0,
};
/** To a hundredth: drawn as doubles, nearly all would be next to nothing. */
const evenly = (low: number, high: number) =>
  fc.integer({ min: 100 * low, max: 100 * high }).map((hundredths) => hundredths / 100);
const some = fc.record({
  legLengthMm: evenly(700, 1200),
  splayDeg: evenly(5, 35),
  tubeMassKg: evenly(0, 6),
  armBearingDeg: evenly(0, 360),
  mountMassKg: evenly(1, 5),
  hungMassKg: evenly(0, 5),
  groundSlopeDeg: evenly(0, 25),
  fallsTowardsDeg: evenly(0, 360),
  footBearingsDeg: fc.constant([0, 120, 240] as const),
});

/**
 * What each foot bears, as a share of the weight, by another way: three loads with one sum and two
 * moments, solved with the matrix of a general 3D library. A foot that would have to pull has lifted.
 */
function footLoads(stand: LoadedStand): number[] {
  const [a, b, c] = feetOf(stand);
  const at = plumbPoint(stand);
  if (a === undefined || b === undefined || c === undefined) throw new Error('three feet');
  const loads = new Vector3(1, at.eastMm, at.northMm).applyMatrix3(
    new Matrix3()
      .set(1, 1, 1, a.eastMm, b.eastMm, c.eastMm, a.northMm, b.northMm, c.northMm)
      .invert(),
  );
  return loads.toArray();
}

describe('a stand', () => {
  it('with its weight in the middle has half the circle of feet as its margin', () => {
    // The inner circle of an equilateral triangle has half the radius of the outer one (Euclid).
    expect(footCircleMm(plain)).toBeCloseTo(500, 9);
    expect(hubHeightMm(plain)).toBeCloseTo(866.025, 3);
    expect(stabilityOf(plain).marginMm).toBeCloseTo(250, 9);
  });

  it('stands just as long as no foot has to pull', () => {
    fc.assert(
      fc.property(some, (stand) => {
        const least = Math.min(...footLoads(stand));
        fc.pre(Math.abs(least) > 1e-6);
        expect(stabilityOf(stand).marginMm > 0).toBe(least > 0);
      }),
    );
  });

  it('tips over the line between the two feet that are not the one that lifts', () => {
    fc.assert(
      fc.property(some, (stand) => {
        const loads = footLoads(stand);
        const least = Math.min(...loads);
        fc.pre(loads.filter((load) => load < least + 0.01).length === 1);
        expect(stabilityOf(stand).overFeet).not.toContain(loads.indexOf(least));
      }),
    );
  });

  it('tips when the ground gets steeper by what is left, and not by less', () => {
    fc.assert(
      fc.property(some, (stand) => {
        const level = { ...stand, groundSlopeDeg: 0 };
        const { slopeLeftDeg, tipsTowardsDeg } = stabilityOf(level);
        // One that tips on the level has no slope left.
        fc.pre(slopeLeftDeg > 0.1);
        const on = (groundSlopeDeg: number) =>
          stabilityOf({ ...level, groundSlopeDeg, fallsTowardsDeg: tipsTowardsDeg }).marginMm;
        expect(on(slopeLeftDeg * 0.999)).toBeGreaterThan(0);
        expect(on(slopeLeftDeg * 1.001)).toBeLessThan(0);
      }),
    );
  });

  it('is lifted off a foot by the push whose moment is the weight’s', () => {
    // By virtual work: turning by dφ about the edge lifts the weight by margin·dφ; the push moves by height·dφ.
    const push = tippingPushN({ ...plain, tubeMassKg: 2, armBearingDeg: 60 }, 1000);
    const { massKg } = centreOf({ ...plain, tubeMassKg: 2 });
    const margin = 250 - (2 * 110) / massKg;
    expect(push).toBeCloseTo((massKg * 9.80665 * margin) / 1000, 9);
    expect(asWeightKg(9.80665)).toBe(1);
  });

  it('stands better wider, lower and with a weight below', () => {
    fc.assert(
      fc.property(some, (stand) => {
        const level = { ...stand, groundSlopeDeg: 0 };
        const left = (change: Partial<LoadedStand>) =>
          stabilityOf({ ...level, ...change }).slopeLeftDeg;
        expect(left({ splayDeg: stand.splayDeg + 1 })).toBeGreaterThan(left({}));
        expect(left({ hungMassKg: stand.hungMassKg + 2 })).toBeGreaterThan(left({}));
      }),
    );
  });
});

describe('fingers between folding legs', () => {
  it('have √3 times the circle of that height between them', () => {
    // Side of an equilateral triangle from its outer circle: √3 R (Euclid).
    expect(gapMm(1000, 30)).toBeCloseTo(Math.sqrt(3) * 500, 9);
    expect(gapMm(caughtUpToMm(7), 7)).toBeCloseTo(fingerMm, 9);
    expect(caughtUpToMm(0)).toBe(Infinity);
  });

  it('are caught farther and farther from the joint as the legs close', () => {
    const reach = [24, 12, 6, 3, 1].map(caughtUpToMm);
    expect([...reach].sort((a, b) => a - b)).toEqual(reach);
  });

  it('feel the push at the foot twenty times, a twentieth of the leg from the joint', () => {
    expect(squeezeN(30, 1000, 50)).toBeCloseTo(600, 9);
  });
});
