import { describe, expect, it } from 'vitest';
import { standing } from '@/tests/support/aligning';
import { degreesToRadians } from '../units/angle';
import { aboutZ, identity, multiply } from '../units/matrix';
import { achievedErrors } from './achieved-errors';
import { targetBands, targetCount } from './target-grid';

const base = standing(0.4, -0.3, 170);
const none = { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 };

describe('what an alignment achieved', () => {
  it('is everything in the eyepiece for a model that is the truth', () => {
    const errors = { ...none, altitudeZeroDeg: 0.7 };
    const achieved = achievedErrors({ base, altitudeZeroDeg: 0.7 }, { base, errors }, 0.01);
    expect(achieved.hitRate).toBe(1);
    expect(achieved.rmsArcmin).toBeLessThan(1e-9);
    expect(Math.max(...achieved.cells.map((cell) => cell.errorArcmin))).toBeLessThan(1e-9);
  });

  it('is off by the zero everywhere when that alone is not known', () => {
    const truth = { base, errors: { ...none, altitudeZeroDeg: 0.2 } };
    const model = { base, altitudeZeroDeg: 0 };
    expect(achievedErrors(model, truth, 12.001).hitRate).toBe(1);
    expect(achievedErrors(model, truth, 11.999).hitRate).toBe(0);
    expect(achievedErrors(model, truth, 12).rmsArcmin).toBeCloseTo(12, 8);
  });

  // A turn of 1° about the vertical moves a direction by 2 asin(sin 0.5° · cos a), by hand.
  it('counts the targets that stay inside when the model is turned about the vertical', () => {
    const model = { base: multiply(aboutZ(1), identity), altitudeZeroDeg: 0 };
    const truth = { base: identity, errors: none };
    const missArcmin = (altitudeDeg: number) =>
      (120 / degreesToRadians(1)) *
      Math.asin(Math.sin(degreesToRadians(0.5)) * Math.cos(degreesToRadians(altitudeDeg)));
    const { hitRate, rmsArcmin, cells } = achievedErrors(model, truth, 30);
    const inside = targetBands.filter((band) => missArcmin(band.altitudeDeg) <= 30);
    expect(hitRate).toBe(inside.reduce((sum, band) => sum + band.count, 0) / targetCount);
    expect(inside.length).toBeGreaterThan(0);
    expect(inside.length).toBeLessThan(targetBands.length);
    const square = targetBands.reduce((s, b) => s + b.count * missArcmin(b.altitudeDeg) ** 2, 0);
    expect(rmsArcmin).toBeCloseTo(Math.sqrt(square / targetCount), 8);
    for (const cell of cells) {
      expect(cell.errorArcmin).toBeCloseTo(missArcmin(cell.altitudeDeg), 8);
    }
  });

  it('a cone error that the model knows nothing of is missed by, more than its size nowhere', () => {
    const truth = { base, errors: { ...none, coneDeg: 8 / 60 } };
    const { cells, hitRate } = achievedErrors({ base, altitudeZeroDeg: 0 }, truth, 7.9);
    expect(hitRate).toBe(0);
    for (const cell of cells) expect(cell.errorArcmin).toBeCloseTo(8, 2);
  });
});
