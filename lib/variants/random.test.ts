import { describe, expect, it } from 'vitest';
import { randomFrom } from './random';

describe('the seeded generator', () => {
  it('repeats itself from the same seed and differs from another', () => {
    const run = (seed: string) => {
      const random = randomFrom(seed);
      return Array.from({ length: 20 }, () => random.next());
    };
    expect(run('a3f0')).toEqual(run('a3f0'));
    expect(run('a3f0')).not.toEqual(run('a3f1'));
    expect(new Set(Array.from({ length: 500 }, (_, i) => run(`seed ${i}`)[0])).size).toBe(500);
  });

  it('keeps giving the numbers it always gave: stored seeds depend on it', () => {
    const random = randomFrom('duskbench');
    expect(Array.from({ length: 4 }, () => random.integer(0, 999))).toMatchInlineSnapshot(`
      [
        647,
        511,
        281,
        910,
      ]
    `);
  });

  it('spreads evenly over [0, 1)', () => {
    const random = randomFrom('even');
    const bins = new Array<number>(10).fill(0);
    for (let i = 0; i < 10_000; i++) {
      const value = random.next();
      expect(value).toBeGreaterThanOrEqual(0);
      expect(value).toBeLessThan(1);
      const bin = Math.floor(value * 10);
      bins[bin] = (bins[bin] ?? 0) + 1;
    }
    // χ² with 9 degrees of freedom is above 27.9 once in a thousand seeds; this seed is fixed.
    const chi2 = bins.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    expect(chi2).toBeLessThan(27.9);
  });

  it('shuffles without losing or doubling anything, every place as likely', () => {
    const random = randomFrom('cards');
    const firsts = new Array<number>(5).fill(0);
    for (let i = 0; i < 5000; i++) {
      const order = random.shuffle([0, 1, 2, 3, 4]);
      expect(order.toSorted()).toEqual([0, 1, 2, 3, 4]);
      const [first = -1] = order;
      firsts[first] = (firsts[first] ?? 0) + 1;
    }
    // Five standard deviations of a count that is 1000 ± 28 by chance.
    expect(firsts.every((count) => Math.abs(count - 1000) < 142)).toBe(true);
  });

  it('gives whole numbers with both ends and nothing from an empty list', () => {
    const random = randomFrom('dice');
    const thrown = new Set(Array.from({ length: 300 }, () => random.integer(1, 6)));
    expect([...thrown].toSorted()).toEqual([1, 2, 3, 4, 5, 6]);
    expect(random.pick<string>([])).toBeUndefined();
  });
});
