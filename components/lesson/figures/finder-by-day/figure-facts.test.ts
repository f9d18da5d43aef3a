import { describe, expect, it } from 'vitest';
import { screwFacts, screwWords } from './screw-facts';
import { sightFacts, sightWords, type SightKit } from './sight-facts';

/** Owl of the product: 1365 mm, finder 80 mm beside the tube. */
const owl = {
  name: 'Owl',
  telescope: {
    focalLengthMm: 1365,
    apertureMm: 105,
    computer: 'solved-zero',
    centringArcmin: 2.747,
    altitudeZeroArcmin: 30,
    coneArcmin: 8,
    axisSkewArcmin: 4,
  },
  bench: {
    tube: {
      massKg: 2.1,
      lengthMm: 300,
      diameterMm: 120,
      centreOfMassFromFrontMm: 165,
      dovetailLengthMm: 150,
      centreAboveAxisMm: 0,
    },
    finderBesideTubeMm: 80,
    parts: [],
    tripod: { footCircleRadiusMm: 450, splayDeg: 24, legMinMm: 700, legMaxMm: 1200 },
  },
} as const satisfies SightKit;
const nine = { id: '9mm', focalLengthMm: 9, apparentFieldDeg: 50 };
const twentyFive = { id: '25mm', focalLengthMm: 25, apparentFieldDeg: 50 };

describe('the figure of two lines of sight', () => {
  it.each([
    // Design, "Finder" and its table of slips: 80 mm at 8, 50 and 300 m.
    [8, 34.4],
    [50, 5.5],
    [300, 0.92],
  ])('is off by what the design says for %i m', (distanceM, arcmin) => {
    expect(sightFacts(owl, nine, distanceM).residualArcmin).toBeCloseTo(arcmin, 1);
  });

  it('loses a star in the 9 mm eyepiece of Owl after a tree 20 m away, not in the 25 mm', () => {
    // Design: 13.8′, outside Owl's 9 mm field of 9.9′ radius.
    expect(sightFacts(owl, nine, 20).inView).toBe(false);
    expect(sightFacts(owl, nine, 20).radiusArcmin).toBeCloseTo(9.9, 1);
    expect(sightFacts(owl, twentyFive, 20).inView).toBe(true);
  });

  it('is right when it was set on a star', () => {
    expect(sightFacts(owl, nine, null).residualArcmin).toBe(0);
    expect(sightWords(owl, nine, null)).toContain('parallel');
  });
});

describe('the figure of dot and screws', () => {
  it('can be solved by quarter turns, to the width of the dot', () => {
    const tries = Array.from({ length: 33 }, (_, i) => (i - 16) / 4);
    const solved = tries.flatMap((side) =>
      tries.filter((rear) => screwFacts([side, rear]).isOn).map((rear) => [side, rear] as const),
    );
    expect(solved.length).toBeGreaterThan(0);
    expect(screwWords(solved[0] ?? [0, 0])).toContain('Lock the screws');
  });

  it('moves the dot 12′ by a turn, nearly along the horizon by the side screw', () => {
    const before = screwFacts([0, 0]).dot;
    const after = screwFacts([1, 0]).dot;
    const along = after.rightArcmin - before.rightArcmin;
    const up = after.upArcmin - before.upArcmin;
    expect(Math.hypot(along, up)).toBeCloseTo(12, 9);
    expect(along).toBeGreaterThan(11.8);
  });
});
