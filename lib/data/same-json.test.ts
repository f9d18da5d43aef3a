import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sameJson } from './same-json';

describe('two JSON values', () => {
  it('are the same when a number has lost its 17th digit', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(sameJson({ at: [value] }, { at: [Number(value.toPrecision(16))] })).toBe(true);
      }),
    );
  });

  it('are the same in any order of their names', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
        const turned = Object.fromEntries(Object.entries(value).toReversed());
        expect(sameJson(value, turned)).toBe(true);
      }),
    );
  });

  it.each([
    [1, 1.000001],
    [0, 1e-300],
    [1, '1'],
    [null, {}],
    [[], {}],
    [[1], [1, 2]],
    [{ a: 1 }, { b: 1 }],
    [{ a: 1 }, { a: 1, b: null }],
    [[{ hip: 1 }], [{ hip: 2 }]],
  ])('%j and %j are not', (one, other) => {
    expect(sameJson(one, other)).toBe(false);
    expect(sameJson(other, one)).toBe(false);
  });
});
