import { describe, expect, it } from 'vitest';
import type { DrawnTube } from '@/lib/drawings/tube-drawing';
import { lightFacts } from './light-facts';
import { widthFacts } from './width-facts';

const wren: DrawnTube = {
  name: 'Wren',
  tubeType: 'refractor',
  focalLengthMm: 500,
  apertureMm: 80,
  lengthMm: 480,
  diameterMm: 90,
};
const owl: DrawnTube = {
  name: 'Owl',
  tubeType: 'maksutov-cassegrain',
  focalLengthMm: 1365,
  apertureMm: 105,
  lengthMm: 300,
  diameterMm: 120,
};

describe('the figure of light through a tube', () => {
  it('leaves half the light under half a card, and none under a whole one', () => {
    for (const tube of [wren, owl]) {
      const left = (coveredPercent: number) =>
        lightFacts(tube, { coveredPercent, aboveArcmin: 0 }).percentLeft;
      expect(left(0)).toBeCloseTo(100, 9);
      expect(left(50)).toBeCloseTo(50, 9);
      expect(left(100)).toBeCloseTo(0, 9);
    }
  });

  // Circular segment, any table of areas: at a quarter of the width 19.55 % of a disc is cut off.
  it('leaves 80.45 % of a lens under a card over a quarter of its width', () => {
    expect(lightFacts(wren, { coveredPercent: 25, aboveArcmin: 0 }).percentLeft).toBeCloseTo(
      80.45,
      2,
    );
  });

  it('brings a star half a degree above the middle F tan 30′ beside it', () => {
    // 500 mm × 0.0087269 and 1365 mm × 0.0087269.
    expect(lightFacts(wren, { coveredPercent: 0, aboveArcmin: 30 }).besideMm).toBeCloseTo(4.363, 3);
    expect(lightFacts(owl, { coveredPercent: 0, aboveArcmin: -30 }).besideMm).toBeCloseTo(
      11.912,
      3,
    );
  });

  it('says what covers the front and what is left', () => {
    expect(lightFacts(wren, { coveredPercent: 50, aboveArcmin: 0 }).words).toContain(
      '50% of the light',
    );
    expect(lightFacts(wren, { coveredPercent: 100, aboveArcmin: 0 }).words).toContain(
      'no light is left',
    );
  });
});

describe('the figure of width and light', () => {
  it('goes by area: 7 mm is one eye, 70 mm a hundred, 140 mm four hundred', () => {
    expect([7, 70, 140].map((mm) => widthFacts(mm, []).ratio)).toEqual([1, 100, 400]);
  });
});
