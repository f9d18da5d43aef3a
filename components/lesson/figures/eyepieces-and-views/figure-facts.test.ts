import { describe, expect, it } from 'vitest';
import type { FigureKit } from '../figure-data';
import { viewFacts, viewTargets, type ViewKit } from './view-facts';
import { starAtFirst, wayRoundFacts, wayRoundWords } from './way-round-facts';

const telescope = (focalLengthMm: number, apertureMm: number): FigureKit['telescope'] => ({
  focalLengthMm,
  apertureMm,
  computer: 'solved-zero',
  centringArcmin: 7.5,
  altitudeZeroArcmin: 30,
  coneArcmin: 8,
  axisSkewArcmin: 4,
});
const wren: ViewKit = { name: 'Wren', telescope: telescope(500, 80) };
const owl: ViewKit = { name: 'Owl', telescope: telescope(1365, 105) };
const eyepiece = (focalLengthMm: number) => ({
  id: `${String(focalLengthMm)}mm`,
  focalLengthMm,
  apparentFieldDeg: 50,
});
const target = (id: string) => {
  const found = viewTargets.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};

describe('the figure of what is in the eyepiece', () => {
  it('has 20 times, 2.5° and a beam of 4 mm for 80 mm at f/6.25 with 25 mm of 50°', () => {
    // By hand: 500/25, 50°/20, 80/20.
    const facts = viewFacts(wren, eyepiece(25), target('moon'));
    expect(facts.times).toBe(20);
    expect(facts.fieldArcmin).toBeCloseTo(150, 9);
    expect(facts.exitPupilMm).toBe(4);
    // 150′ at 15.041′ a minute on the equator.
    expect(facts.driftSeconds / 60).toBeCloseTo(150 / 15.041, 3);
  });

  it('shows the Pleiades whole in Wren with 25 mm and not with 9 mm', () => {
    expect(viewFacts(wren, eyepiece(25), target('pleiades')).verdict).toBe('Whole in view.');
    expect(viewFacts(wren, eyepiece(9), target('pleiades')).verdict).toContain('Too wide');
  });

  it('parts Mizar, 14.4″, from 17 times on', () => {
    // 14.4″ × 20 are 4.8′; × 16.6 would be 4′.
    expect(viewFacts(wren, eyepiece(25), target('mizar')).verdict).toContain('Two stars');
    expect(viewFacts(wren, eyepiece(32), target('mizar')).verdict).toContain('run together');
    expect(viewFacts(owl, eyepiece(9), target('mizar')).verdict).toContain('36′');
  });
});

describe('the figure of which way round', () => {
  const still = { rightArcmin: 0, upArcmin: 0 };
  it.each([
    ['refractor', 45, 30],
    ['reflector', -45, -30],
    ['maksutov-cassegrain', -45, 30],
  ] as const)(
    'shows a star up and to the right through a %s at %i′, %i′',
    (tubeType, right, up) => {
      expect(wayRoundFacts({ tubeType }, still).inView).toEqual({
        rightArcmin: right,
        upArcmin: up,
      });
    },
  );

  it('has the star in the middle once the tube has gone to it, in every view', () => {
    for (const tubeType of ['refractor', 'reflector', 'maksutov-cassegrain'] as const) {
      expect(wayRoundFacts({ tubeType }, starAtFirst).centred).toBe(true);
      expect(wayRoundWords({ name: 'It', tubeType }, starAtFirst)).toContain('in the middle');
    }
  });
});
