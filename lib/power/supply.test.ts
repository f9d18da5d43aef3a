import { describe, expect, it } from 'vitest';
import { faultsOfSupply, suppliedV, type Supply, type TelescopeNeeds } from './supply';

const needs: TelescopeNeeds = {
  nominalV: 12,
  centre: 'positive',
  highestV: 14,
  resetBelowV: 7.2,
  trackingA: 0.2,
  slewingA: 1.2,
};
const right: Supply = { id: 'A', form: 'battery-pack', volts: 12, ratedA: 2, centre: 'positive' };

describe('a supply for a student outdoors', () => {
  it('fits when voltage and polarity are equal and the current is enough', () => {
    expect(faultsOfSupply(right, needs)).toEqual([]);
    expect(faultsOfSupply({ ...right, ratedA: 1.2 }, needs)).toEqual([]);
  });

  it.each([
    [{ centre: 'negative' }, 'wrong-polarity'],
    [{ volts: 24 }, 'too-many-volts'],
    [{ volts: 5 }, 'too-few-volts'],
    [{ ratedA: 0.5 }, 'too-little-current'],
    [{ form: 'mains-adapter' }, 'mains-outdoors'],
  ] as const)('with %o fails for %s alone', (change, verdict) => {
    expect(faultsOfSupply({ ...right, ...change }, needs)).toEqual([verdict]);
  });

  it('may fail for more than one thing', () => {
    expect(faultsOfSupply({ ...right, volts: 24, ratedA: 0.5 }, needs)).toEqual([
      'too-many-volts',
      'too-little-current',
    ]);
  });

  it('holds its volts up to its rated current and gives no more than its rated power beyond', () => {
    const weak = { ...right, ratedA: 0.5 };
    expect(suppliedV(weak, 0.5)).toBe(12);
    expect(suppliedV(weak, 1)).toBe(6);
    for (const amperes of [0.6, 1, 2])
      expect(suppliedV(weak, amperes) * amperes).toBeCloseTo(12 * 0.5, 12);
  });
});
