import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { itemRest, itemTotal, membership, totals, upperLower } from './discrimination';
import {
  alpha,
  kr20,
  kr21,
  reliabilityOfOwnItems,
  standardErrorOfMeasurement,
} from './reliability';
import { footingOf, itemNote } from './small-class';
import { correlation } from './spread';
import { angoffCut, borderlineRegression, itemsToPass } from './standard-setting';

const tableOf = (score: fc.Arbitrary<number>) =>
  fc
    .tuple(fc.integer({ min: 2, max: 8 }), fc.integer({ min: 2, max: 30 }))
    .chain(([items, people]) =>
      fc.array(fc.array(score, { minLength: items, maxLength: items }), {
        minLength: people,
        maxLength: people,
      }),
    );
const rightOrWrong = tableOf(fc.constantFrom(0, 1));
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('reliability', () => {
  test('of right-or-wrong items is the same by KR-20 as by α', () => {
    fc.assert(
      fc.property(rightOrWrong, (table) => {
        const [one, other] = [kr20(table), alpha(table)];
        expect(one === null).toBe(other === null);
        if (one !== null) expect(one).toBeCloseTo(other ?? Number.NaN, 9);
      }),
    );
  });

  test('never exceeds 1, and formula 21 never exceeds 20', () => {
    fc.assert(
      fc.property(rightOrWrong, (table) => {
        const found = kr20(table);
        if (found === null) return;
        expect(found).toBeLessThanOrEqual(1 + 1e-12);
        expect(kr21(table)).toBeLessThanOrEqual(found + 1e-9);
      }),
    );
  });

  test('is 1 where every item says the same of everybody', () => {
    const table = [
      [1, 1, 1],
      [0, 0, 0],
      [0.5, 0.5, 0.5],
    ];
    expect(alpha(table)).toBeCloseTo(1, 12);
    expect(reliabilityOfOwnItems(table)).toBe(1);
  });

  test('cannot be told of one item, nor where all have the same total', () => {
    expect(alpha([[1], [0]])).toBeNull();
    const alike = [
      [1, 0],
      [0, 1],
    ];
    expect([kr20(alike), kr21(alike), alpha(alike), reliabilityOfOwnItems(alike)]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });

  test('of items of one’s own does not depend on which of them stands first', () => {
    fc.assert(
      fc.property(tableOf(share), (table) => {
        const turned = table.map((row, person) => (person % 2 === 0 ? row : row.toReversed()));
        const [one, other] = [reliabilityOfOwnItems(table), reliabilityOfOwnItems(turned)];
        if (one !== null && other !== null) expect(other).toBeCloseTo(one, 6);
      }),
    );
  });

  test('below zero promises nothing: the error is the whole spread', () => {
    expect(standardErrorOfMeasurement(12, -0.4)).toBe(12);
  });
});

describe('discrimination', () => {
  test('lies between −1 and 1, whatever was earned', () => {
    fc.assert(
      fc.property(tableOf(share), (table) => {
        for (const r of [itemRest(table, 0), itemTotal(table, 0)])
          if (r !== null) expect(Math.abs(r)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('cannot be told where everybody had the item right', () => {
    const table = [
      [1, 0],
      [1, 1],
      [1, 0],
    ];
    expect(itemRest(table, 0)).toBeNull();
  });

  test('turns its sign when the item’s marks are turned', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(share, share), { minLength: 2 }), (pairs) => {
        const xs = pairs.map(([x]) => x);
        const ys = pairs.map(([, y]) => y);
        const r = correlation(xs, ys);
        const turned = correlation(
          xs.map((x) => 1 - x),
          ys,
        );
        if (r !== null && turned !== null) expect(turned).toBeCloseTo(-r, 6);
      }),
    );
  });
});

describe('the upper and the lower 27 %', () => {
  const scores = fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 1, maxLength: 40 });

  test('hold 27 % of the people, shared where they tie', () => {
    fc.assert(
      fc.property(scores, fc.constantFrom(0.27, 0.5, 1), (all, part) => {
        const sum = membership(all, part).reduce((total, one) => total + one, 0);
        expect(sum).toBeCloseTo(part * all.length, 9);
      }),
    );
  });

  test('treat people of one total alike, whatever order they stand in', () => {
    fc.assert(
      fc.property(scores, (all) => {
        const parts = membership(all, 0.27);
        all.forEach((total, index) => {
          expect(parts[index]).toBe(parts[all.indexOf(total)]);
        });
      }),
    );
  });

  test('differ by nothing where all totals are the same', () => {
    const table = [
      [1, 0],
      [0, 1],
      [1, 0],
      [0, 1],
    ];
    expect(upperLower([1, 0, 1, 0], totals(table))).toBeCloseTo(0, 12);
  });
});

describe('a small class', () => {
  test('of 9 has counts alone, of 10 shares, and from 30 on figures to trust', () => {
    expect([9, 10, 29, 30].map(footingOf)).toEqual([
      'counts-only',
      'too-few-to-trust',
      'too-few-to-trust',
      'enough',
    ]);
  });

  test('has no item condemned for telling nobody apart where nearly all are right', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 400 }),
        fc.double({ min: 0.9, max: 1, noNaN: true }),
        fc.option(fc.double({ min: -1, max: 1, noNaN: true })),
        (people, difficulty, rest) => {
          expect(itemNote({ people, difficulty, itemRest: rest })).toBe('nearly-all-right');
        },
      ),
    );
  });

  test('has an item named as going against the rest only on enough answers', () => {
    const item = { difficulty: 0.6, itemRest: -0.3 };
    expect(itemNote({ ...item, people: 29 })).toBeNull();
    expect(itemNote({ ...item, people: 30 })).toBe('against-the-rest');
    expect(itemNote({ people: 12, difficulty: 0.2, itemRest: null })).toBe('hard');
    expect(itemNote({ people: 9, difficulty: 0, itemRest: null })).toBeNull();
  });
});

describe('a pass mark', () => {
  test('of one judge is that judge’s own and has no spread', () => {
    expect(angoffCut([[0.5, 0.75]])).toEqual({
      cut: 1.25,
      judgeCuts: [1.25],
      deviation: null,
      standardError: null,
    });
  });

  test('that is a whole number takes just that many items, binary fractions or not', () => {
    expect(itemsToPass(0.1 + 0.2 + 0.7)).toBe(1);
    expect(itemsToPass(0.6 + 0.7 + 0.8 + 0.9)).toBe(3);
    expect(itemsToPass(3.01)).toBe(4);
  });

  test('cannot be read off ratings that are all the same', () => {
    expect(borderlineRegression([{ rating: 3, mark: 60 }], 2)).toBeNull();
  });
});
