import { describe, expect, it } from 'vitest';
import { directionOnHourCircle, hourCircleOf } from '@/lib/clock/hour-angle';
import { azAltFromDirection, directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import { latitudeDeg, patternFacts, type FaultKind } from './pattern-facts';
import { patternWords } from './pattern-words';
import { testLandings } from './two-suspects-facts';
import { suspectsWords } from './two-suspects-words';

const slewAt = (kind: FaultKind, size: number, azimuthDeg: number, altitudeDeg = 30) => {
  const found = patternFacts(kind, size, 'before').slews.find(
    ({ star }) => star.azimuthDeg === azimuthDeg && star.altitudeDeg === altitudeDeg,
  );
  if (found === undefined) throw new Error('no such star in the figure');
  return found;
};

describe('the figure of patterns', () => {
  it('lifts every slew by the same when the tube was not level', () => {
    const { slews } = patternFacts('zero', 3, 'before');
    for (const { upDeg, rightDeg } of slews) {
      expect(upDeg).toBeCloseTo(3, 6);
      expect(rightDeg).toBeCloseTo(0, 6);
    }
  });

  it('lifts the east and lowers the west when the base rises toward the east', () => {
    expect(slewAt('lean', 3, 90).upDeg).toBeCloseTo(3, 6);
    expect(slewAt('lean', 3, 270).upDeg).toBeCloseTo(-3, 6);
  });

  it('turns to the right by the width of the azimuth: 10° are 8.7° at 30° up', () => {
    // 2 asin(cos 30° · sin 5°)
    expect(slewAt('north', 10, 135).missDeg).toBeCloseTo(8.6579, 3);
    expect(slewAt('north', 10, 135).rightDeg).toBeGreaterThan(8);
  });

  it('goes on along the star’s own circle when the clock is fast', () => {
    const { star, lands } = slewAt('clock', 6, 180);
    const from = hourCircleOf(directionFromAzAlt(star.azimuthDeg, star.altitudeDeg), latitudeDeg);
    const later = directionOnHourCircle(
      { ...from, hourAngleDeg: from.hourAngleDeg + 15.041 },
      latitudeDeg,
    );
    expect(
      separationDeg(later, directionFromAzAlt(lands.azimuthDeg, lands.altitudeDeg)),
    ).toBeLessThan(0.01);
  });

  it('tips the sky as a place farther north has it', () => {
    const { star, lands } = slewAt('latitude', 5, 180);
    const circle = hourCircleOf(directionFromAzAlt(star.azimuthDeg, star.altitudeDeg), latitudeDeg);
    const there = azAltFromDirection(directionOnHourCircle(circle, latitudeDeg + 5));
    expect(lands.altitudeDeg).toBeCloseTo(there.altitudeDeg, 6);
    expect(lands.azimuthDeg).toBeCloseTo(there.azimuthDeg, 6);
  });

  it.each(['zero', 'north', 'lean'] as const)('takes %s out with two stars', (kind) => {
    const facts = patternFacts(kind, 2, 'after');
    // design, "Which slip bites where": under 0.001′ for a lean of 1°
    expect(facts.mostDeg).toBeLessThan(0.001);
    expect(patternWords(kind, 'after', facts)).toContain('taken it out');
  });

  it('refuses the two stars for a clock an hour fast, as no base leans so far', () => {
    const facts = patternFacts('clock', 6, 'after');
    expect(facts.outcome?.kind).toBe('base-on-its-side');
    expect(patternWords('clock', 'after', facts)).toContain('refuses');
  });

  it('leaves a kick after the alignment as it is: up to its own size', () => {
    const facts = patternFacts('bump', 2, 'after');
    expect(facts.mostDeg).toBeCloseTo(2, 1);
    expect(patternFacts('bump', 2, 'before').mostDeg).toBeLessThan(1e-6);
  });
});

describe('the figure of two suspects', () => {
  it('has both explain the slew that went wrong', () => {
    const { zero, lean, apartDeg } = testLandings({ azimuthDeg: 135, altitudeDeg: 40 });
    expect(zero.upDeg).toBeCloseTo(3, 6);
    expect(lean.upDeg).toBeCloseTo(3, 6);
    expect(apartDeg).toBeLessThan(1e-6);
  });

  it('parts them by 6° on the opposite side, and says so', () => {
    const landings = testLandings({ azimuthDeg: 315, altitudeDeg: 40 });
    expect(landings.apartDeg).toBeCloseTo(6, 6);
    expect(suspectsWords(landings)).toContain('A good test');
    expect(suspectsWords(testLandings({ azimuthDeg: 150, altitudeDeg: 40 }))).toContain(
      'tell you nothing',
    );
  });
});
