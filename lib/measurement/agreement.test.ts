import fc from 'fast-check';
import { expect, test } from 'vitest';
import { agreement, agreementOfLevels } from './agreement';

const level = fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const);

test('two assessors who always give the same level have nothing that κ could be reckoned from', () => {
  expect(
    agreementOfLevels([
      [4, 4],
      [4, 4],
    ]),
  ).toMatchObject({ pairs: 2, observed: 1, byChance: 1, kappa: null, weighted: null });
});

test('two assessors with nothing in common have no agreement at all', () => {
  expect(agreementOfLevels([])).toBeNull();
});

test('a difference of one level costs less than one of three', () => {
  const near = agreementOfLevels([
    [1, 1],
    [4, 4],
    [2, 3],
  ]);
  const far = agreementOfLevels([
    [2, 2],
    [3, 3],
    [1, 4],
  ]);
  expect(near?.observed).toBe(far?.observed);
  expect(near?.weighted).toBeGreaterThan(far?.weighted ?? 1);
});

test('κ is 1 exactly where all ratings agree, and never above', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(level, level), { minLength: 1 }), (pairs) => {
      const found = agreementOfLevels(pairs);
      if (found === null || found.kappa === null) return;
      expect(found.kappa).toBeLessThanOrEqual(1);
      expect(found.kappa === 1).toBe(pairs.every(([a, b]) => a === b));
    }),
  );
});

test('who is called the first assessor makes no difference', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(level, level), { minLength: 1 }), (pairs) => {
      const one = agreementOfLevels(pairs);
      const other = agreementOfLevels(pairs.map(([a, b]) => [b, a] as const));
      expect(other?.weighted ?? null).toEqual(
        typeof one?.weighted === 'number' ? expect.closeTo(one.weighted, 12) : null,
      );
      expect(other?.observed).toBe(one?.observed);
    }),
  );
});

test('of two ratings, quadratic weights change nothing', () => {
  const found = agreement([
    [90, 4],
    [4, 2],
  ]);
  expect(found?.weighted).toBe(found?.kappa);
});

test('a table that is not square is refused', () => {
  expect(() => agreement([[1, 2]])).toThrow('square');
});
