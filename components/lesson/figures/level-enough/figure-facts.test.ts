import { describe, expect, it } from 'vitest';
import { halfTurnWords, bubbleOverGround } from './half-turn-facts';
import { headFacts } from './head-facts';
import { leanFacts } from './lean-facts';
import { headWords } from './bubble-words';
import type { FigureKit } from '../figure-data';

/** As in the kits of the product: feet 450 mm from the middle, legs 24° from the vertical. */
const tripod = { footCircleRadiusMm: 450, splayDeg: 24, legMinMm: 700, legMaxMm: 1200 };
const owl: FigureKit = {
  id: 'owl',
  name: 'Owl',
  tubeType: 'maksutov-cassegrain',
  fieldRadiusArcmin: 27,
  telescope: {
    focalLengthMm: 1365,
    apertureMm: 105,
    computer: 'solved-zero',
    centringArcmin: 2.7,
    altitudeZeroArcmin: 30,
    coneArcmin: 8,
    axisSkewArcmin: 4,
  },
  eyepieces: [
    { id: '25mm', focalLengthMm: 25, apparentFieldDeg: 50 },
    { id: '9mm', focalLengthMm: 9, apparentFieldDeg: 50 },
  ],
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
    tripod,
  },
};

describe('the figure of three legs and one bubble', () => {
  it('has 10 mm of one leg tip a level head by atan(10 cos 24° / 675)', () => {
    // Design, "Levelling": ΔL cos β over 1.5 r.
    const facts = headFacts({ tiltDeg: 0, towardsDeg: 0 }, tripod, [0, 10, 0]);
    const expected = Math.atan((10 * Math.cos((24 * Math.PI) / 180)) / 675);
    expect(facts.tiltDeg).toBeCloseTo((expected * 180) / Math.PI, 6);
    expect(facts.risesTowardsDeg).toBeCloseTo(120, 6);
  });

  it('begins 5 mm off and can be levelled by two legs, as the worked example says', () => {
    const ground = { tiltDeg: 2.5, towardsDeg: 165 };
    const start = headFacts(ground, tripod, [0, 0, 0]);
    expect(Math.hypot(start.bubble.eastMm, start.bubble.northMm)).toBeCloseTo(5, 1);
    expect(start.best.leg).toBe(0);
    expect(start.best.byMm).toBeGreaterThan(0);
    // 2.04° along A and 0.75° along B, 12.9 mm of leg a degree: by the law of sines on the bubble's way.
    const two = headFacts(ground, tripod, [26, -10, 0]);
    expect(two.level).toBe(true);
    expect(headWords(two)).toMatch(/^Level/);
  });
});

describe('the figure of the half-turn', () => {
  it('shows 2 mm a degree for the head, and the vial’s own fault turned round', () => {
    const one = { leanDeg: 1, ownMm: 2 };
    expect(bubbleOverGround(one, false).northMm).toBeCloseTo(4, 2);
    expect(bubbleOverGround(one, true).northMm).toBeCloseTo(0, 2);
    expect(halfTurnWords(one, true, true)).toContain('2.0 mm, is the vial’s own');
    expect(halfTurnWords(one, true, true)).toContain('leans by 1.0°');
  });

  it('says of a true vial that it is true, and nothing before it was turned', () => {
    const one = { leanDeg: 1.5, ownMm: 0 };
    expect(halfTurnWords(one, true, true)).toContain('The vial is true');
    expect(halfTurnWords(one, false, false)).not.toContain('leans');
  });
});

describe('the figure of what a lean costs', () => {
  it('misses by the whole lean along the slope and by twice of it where the base is taken as level', () => {
    // Design, "Levelling": t cos(A − A_t), and the difference of two such.
    const facts = leanFacts(owl, 1, 180);
    expect(facts.first.upArcmin).toBeCloseTo(-60, 3);
    expect(facts.believedLevel.missArcmin).toBeCloseTo(120, 0);
    expect(facts.afterTwoStarsArcmin).toBeLessThan(0.001);
    // 50° ÷ (1365/25) is 55′ from edge to edge.
    expect(facts.fieldArcmin).toBeCloseTo(27.5, 1);
  });

  it('is refused above 5°', () => {
    expect(leanFacts(owl, 5.1, 90).afterTwoStarsArcmin).toBeNull();
    expect(leanFacts(owl, 4.9, 90).afterTwoStarsArcmin).not.toBeNull();
  });
});
