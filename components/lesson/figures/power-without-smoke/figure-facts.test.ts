import { describe, expect, it } from 'vitest';
import { coldNight, coldWords, startingCold } from './cold-facts';
import { labelWords, startingLabel } from './label-facts';
import { rowFacts, rowWords, startingRow, type CellWay } from './row-facts';

const row = (...ways: CellWay[]): CellWay[] => [
  ...ways,
  ...Array.from({ length: 8 - ways.length }, (): CellWay => 'right'),
];

describe('the row of cells', () => {
  it.each([
    // By hand: eight of 1.5 V, each turned one takes away 3 V.
    [row(), 12],
    [row('turned'), 9],
    [row('turned', 'turned'), 6],
    [row('turned', 'turned', 'turned', 'turned'), 0],
    [Array.from({ length: 8 }, (): CellWay => 'turned'), -12],
  ])('%j makes %d volts', (ways, volts) => {
    expect(rowFacts(ways).openV).toBeCloseTo(volts, 9);
  });

  it('is open with one cell out, and says so', () => {
    const facts = rowFacts(row('out'));
    expect(facts.openV).toBeNull();
    expect(rowWords(facts)).toContain('open');
  });

  it('with one turned starts the computer, and drops it in a slew', () => {
    // By hand: 9 V less 1.2 A through eight times 0.2 ohm is 7.08 V, below 7.2 V.
    const facts = rowFacts(startingRow);
    expect(facts.slewV).toBeCloseTo(7.08, 9);
    expect(facts.restarts).toBe(true);
    expect(rowWords(facts)).toContain('restarts');
  });

  it('turned whole warns of exchanged plus and minus', () => {
    expect(rowWords(rowFacts(Array.from({ length: 8 }, (): CellWay => 'turned')))).toContain(
      'exchanged',
    );
  });
});

describe('the label', () => {
  it('starts with too little current: 12 V × 0.5 A over 1.2 A leave 5 V', () => {
    expect(labelWords(startingLabel)).toContain('5.0 V');
  });

  it('serves with enough, and with more than enough', () => {
    expect(labelWords({ ...startingLabel, ratedA: 2 })).toMatch(/^It serves/);
    expect(labelWords({ ...startingLabel, ratedA: 5 })).toMatch(/^It serves/);
  });

  it.each([
    [{ ...startingLabel, ratedA: 2, volts: 24 }, 'Too many volts'],
    [{ ...startingLabel, ratedA: 2, volts: 5 }, 'Too few volts'],
    [{ ...startingLabel, ratedA: 2, centre: 'negative' as const }, 'polarity'],
    [{ ...startingLabel, ratedA: 2, form: 'mains-adapter' as const }, 'mains'],
  ])('%j does not serve', (label, words) => {
    expect(labelWords(label)).toMatch(/^It does not serve/);
    expect(labelWords(label)).toContain(words);
  });
});

describe('the cold', () => {
  it('at 250 mA and 20 °C leaves alkaline cells the five hours of IEC 60086-2 (from memory)', () => {
    // Three minutes in the hour: 0.05 × 1.2 + 0.95 × 0.2 = 0.25 A.
    const ahead = coldNight({ kind: 'alkaline', temperatureC: 20, slewingMinutes: 3 });
    expect(ahead.meanA).toBeCloseTo(0.25, 9);
    expect(ahead.runTimeHours).toBeCloseTo(5, 9);
  });

  it('never lets cells last longer, nor hold more volts, than it was warmer', () => {
    for (let t = -20; t < 20; t++) {
      const [colder, warmer] = [t, t + 1].map((temperatureC) =>
        coldNight({ ...startingCold, temperatureC }),
      );
      expect(colder?.runTimeHours).toBeLessThanOrEqual(warmer?.runTimeHours ?? 0);
      expect(colder?.slewingV).toBeLessThanOrEqual(warmer?.slewingV ?? 0);
    }
  });

  it('makes alkaline cells restart the computer at −10 °C: 12 V less 1.2 A times 8 × 0.2 × 2^1.5 ohms', () => {
    const night = { ...startingCold, temperatureC: -10 };
    const ahead = coldNight(night);
    expect(ahead.slewingV).toBeCloseTo(12 - 1.2 * 8 * 0.2 * 2 ** 1.5, 9);
    expect(coldWords(night, ahead)).toContain('restarts');
  });
});
