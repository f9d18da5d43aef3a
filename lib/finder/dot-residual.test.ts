import { describe, expect, it } from 'vitest';
import { loadKits } from '../content/sky-catalogue';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { directionFromAzAlt, separationDeg, type Vector3 } from '../units/vector';
import { dotAtInfinity, dotResidualArcmin } from './dot-residual';

describe('a finder 80 mm beside the tube', () => {
  // Design, "Finder" and "Which slip bites where", worked by hand from atan(b/D).
  it.each([
    [50, 5.5],
    [300, 0.917],
    [20, 13.75],
    [8, 34.38],
  ])('set on something %i m away is off by %f′ on the sky', (distanceM, arcmin) => {
    expect(dotResidualArcmin({ apartMm: 80, distanceM })).toBeCloseTo(arcmin, 2);
  });

  it('set on a tree 20 m away serves every 25 mm eyepiece, and not 9 mm on the longest tube', () => {
    const residual = dotResidualArcmin({ apartMm: 80, distanceM: 20 });
    const serves = (id: string, focalLengthMm: number) => {
      const kit = loadKits().find((one) => one.id === id);
      if (kit === undefined) throw new Error(`no kit ${id}`);
      const eyepiece = { focalLengthMm, apparentFieldDeg: 50 };
      return residual < fieldRadiusArcmin(kit.telescope, eyepiece);
    };
    expect(['wren', 'heron', 'owl'].map((id) => serves(id, 25))).toEqual([true, true, true]);
    expect(['wren', 'heron', 'owl'].map((id) => serves(id, 9))).toEqual([true, true, false]);
  });

  it('set on a fence 8 m away serves no 9 mm eyepiece', () => {
    const residual = dotResidualArcmin({ apartMm: 80, distanceM: 8 });
    for (const { telescope } of loadKits()) {
      const radius = fieldRadiusArcmin(telescope, { focalLengthMm: 9, apparentFieldDeg: 50 });
      expect(residual).toBeGreaterThan(radius);
    }
  });
});

it('a dot whose finder sits right of and above the tube lies left of and below it on the sky', () => {
  // Geometry told once more: the line from the finder through the thing 50 m ahead, far beyond it.
  const finder: Vector3 = [0.06, 0, 0.08];
  const line: Vector3 = [0 - finder[0], 50 - finder[1], 0 - finder[2]];
  const dot = dotAtInfinity({ finderRightMm: 60, finderUpMm: 80, distanceM: 50 });
  const asDirection = directionFromAzAlt(dot.rightArcmin / 60, dot.upArcmin / 60);
  expect(dot.rightArcmin).toBeLessThan(0);
  expect(dot.upArcmin).toBeLessThan(0);
  expect(separationDeg(asDirection, line) * 60).toBeLessThan(0.001);
  expect(Math.hypot(dot.rightArcmin, dot.upArcmin)).toBeCloseTo(
    dotResidualArcmin({ apartMm: 100, distanceM: 50 }),
    4,
  );
});
