import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { randomFrom } from '../variants/random';
import type { Evidence } from './evidence';
import { masteryOf, neededInARow, type Mastery } from './mastery';

const dayMs = 24 * 3_600_000;
const start = new Date('2026-11-02T10:00:00Z');
const day = (days: number): Date => new Date(start.getTime() + days * dayMs);

/** "a+": the kind a, passed; "a-": not passed; "a!": full marks and a failed gate. */
const piece = (written: string, days: number): Evidence => ({
  skill: 'level',
  template: written.charAt(0),
  mark: written.endsWith('-') ? 79.9 : 80,
  passMark: 80,
  gateFailed: written.endsWith('!'),
  at: day(days),
});
/** One after another, an hour apart, from the first day on. */
const inOneGo = (written: string): Evidence[] =>
  written.split(' ').map((one, index) => piece(one, index / 24));

// The design's rule (domain §6): three in a row, on different templates.
test.each<[string, Mastery['state'], number]>([
  ['a+', 'practising', 1],
  ['a+ b+', 'practising', 2],
  ['a+ b+ c+', 'mastered', 3],
  ['a+ b+ c-', 'practising', 0],
  ['a+ b+ c- d+', 'practising', 1],
  ['a+ b- c+ d+ e+', 'mastered', 3],
  ['a+ b- a+ c+ d+', 'mastered', 3],
  ['a+ a+ a+', 'practising', 1],
  ['a+ b+ a+', 'practising', 2],
  ['a+ b+ a+ c+', 'mastered', 3],
  ['a+ b+ a- c+', 'practising', 1],
  ['a+ b+ c!', 'practising', 0],
  ['a- b- c-', 'practising', 0],
  ['a+ b+ c+ d-', 'mastered', 0],
  ['a+ b+ c+ d+', 'mastered', 3],
])('%s: %s, %i in a row', (written, state, inARow) => {
  expect(masteryOf(inOneGo(written), day(1))).toMatchObject({ state, inARow });
});

test('without any evidence it is not started', () => {
  expect(masteryOf([], start)).toEqual({
    state: 'not-started',
    inARow: 0,
    masteredAt: null,
    nextReviewAt: null,
    reviewsPassed: 0,
    pieces: 0,
    lastAt: null,
  });
});

test('the noise of adding binary fractions costs nobody a pass', () => {
  const almost = { ...piece('a+', 0), mark: 79.99999999999999 };
  expect(masteryOf([almost], day(1)).inARow).toBe(1);
});

test.each([
  ['a+ b+ c+ d+', 'mastered', 3],
  ['a+ b+ c+ d-', 'practising', 0],
  ['d- a+ b+ c+', 'practising', 0],
  ['a+ d- b+ c+', 'practising', 0],
] as const)(
  'handed in together, %s is %s: one that fails breaks the row',
  (written, state, inARow) => {
    const together = written.split(' ').map((one) => piece(one, 0));
    expect(masteryOf(together, day(1))).toMatchObject({ state, inARow });
  },
);

test('nothing right is no pass, even under a pass mark of nothing', () => {
  const nothing = ['a', 'b', 'c'].map((kind) => ({ ...piece(kind, 0), mark: 0, passMark: 0 }));
  expect(masteryOf(nothing, day(1))).toMatchObject({ state: 'practising', inARow: 0 });
});

const mastered = ['a+', 'b+', 'c+'].map((one) => piece(one, 0));

// The design's days (domain §6): reviews after 2, 7 and 21 days.
describe('reviews', () => {
  it('fall due 2, 7 and 21 days after mastery', () => {
    expect(masteryOf(mastered, day(1))).toMatchObject({ nextReviewAt: day(2), reviewsPassed: 0 });
    const first = [...mastered, piece('d+', 2)];
    expect(masteryOf(first, day(3))).toMatchObject({ nextReviewAt: day(7), reviewsPassed: 1 });
    const second = [...first, piece('a+', 7)];
    expect(masteryOf(second, day(8))).toMatchObject({ nextReviewAt: day(21), reviewsPassed: 2 });
    const third = [...second, piece('b+', 21)];
    expect(masteryOf(third, day(400))).toMatchObject({
      state: 'kept',
      nextReviewAt: null,
      reviewsPassed: 3,
      masteredAt: start,
    });
  });

  it('are due from their instant on, not before', () => {
    expect(masteryOf(mastered, new Date(day(2).getTime() - 1)).state).toBe('mastered');
    expect(masteryOf(mastered, day(2)).state).toBe('review-due');
    expect(masteryOf(mastered, day(90)).state).toBe('review-due');
  });

  it('stay due while what is done is not passed', () => {
    const failed = [...mastered, piece('d-', 3)];
    expect(masteryOf(failed, day(4))).toMatchObject({ state: 'review-due', nextReviewAt: day(2) });
    const then = [...failed, piece('e+', 4)];
    expect(masteryOf(then, day(4.5))).toMatchObject({ state: 'mastered', reviewsPassed: 1 });
  });

  it('count from half a day before their time, so that the same lesson a week later is not too soon', () => {
    const tooSoon = [...mastered, piece('d+', 1.49)];
    expect(masteryOf(tooSoon, day(2))).toMatchObject({ state: 'review-due', reviewsPassed: 0 });
    const soonEnough = [...mastered, piece('d+', 1.5)];
    expect(masteryOf(soonEnough, day(2))).toMatchObject({ state: 'mastered', reviewsPassed: 1 });
  });

  it('that come late move the later ones along, so that the gaps stay', () => {
    const late = [...mastered, piece('d+', 12)];
    expect(masteryOf(late, day(13)).nextReviewAt).toEqual(day(17));
    expect(masteryOf([...late, piece('e+', 17)], day(18)).nextReviewAt).toEqual(day(31));
  });

  it('are one each time: two passed on one day are one review', () => {
    const twice = [...mastered, piece('d+', 2), piece('e+', 2.1)];
    expect(masteryOf(twice, day(3)).reviewsPassed).toBe(1);
  });
});

const anyPiece = fc
  .record({
    kind: fc.constantFrom('a', 'b', 'c', 'd'),
    how: fc.constantFrom('+', '+', '+', '-', '!'),
    days: fc.integer({ min: 0, max: 600 }).map((tenths) => tenths / 10),
  })
  .map(({ kind, how, days }) => piece(`${kind}${how}`, days));
const anyHistory = fc.uniqueArray(anyPiece, {
  maxLength: 30,
  // Two at one instant have no order of their own.
  selector: ({ at }) => at.getTime(),
});

describe('whatever was done', () => {
  it('says the same in whichever order the evidence is given', () => {
    fc.assert(
      fc.property(anyHistory, fc.string(), (history, seed) => {
        const shuffled = randomFrom(seed).shuffle(history);
        expect(masteryOf(shuffled, day(61))).toEqual(masteryOf(history, day(61)));
      }),
    );
  });

  it('never takes mastery back, and passes no more reviews than there are', () => {
    fc.assert(
      fc.property(anyHistory, anyPiece, (history, more) => {
        const later = { ...more, at: day(61) };
        const before = masteryOf(history, day(60.5));
        const after = masteryOf([...history, later], day(61.5));
        if (before.masteredAt !== null) expect(after.masteredAt).toEqual(before.masteredAt);
        expect(after.reviewsPassed - before.reviewsPassed).toBeGreaterThanOrEqual(0);
        expect(after.reviewsPassed).toBeLessThanOrEqual(3);
      }),
    );
  });

  it('is mastered exactly when some stretch without a failure holds three kinds', () => {
    fc.assert(
      fc.property(anyHistory, (history) => {
        const inOrder = history.toSorted((a, b) => a.at.getTime() - b.at.getTime());
        const stretches = inOrder.reduce<Evidence[][]>(
          (all, one) =>
            one.mark < one.passMark || one.gateFailed
              ? [...all, []]
              : [...all.slice(0, -1), [...(all.at(-1) ?? []), one]],
          [[]],
        );
        const held = stretches.some(
          (stretch) => new Set(stretch.map(({ template }) => template)).size >= neededInARow,
        );
        expect(masteryOf(history, day(61)).masteredAt !== null).toBe(held);
      }),
    );
  });

  it('says of each state what belongs to it', () => {
    fc.assert(
      fc.property(anyHistory, fc.integer({ min: 61, max: 120 }), (history, now) => {
        const { state, ...of } = masteryOf(history, day(now));
        expect(of.pieces === 0).toBe(state === 'not-started');
        expect(of.masteredAt === null).toBe(state === 'not-started' || state === 'practising');
        expect(of.reviewsPassed === 3).toBe(state === 'kept');
        const due = of.nextReviewAt !== null && of.nextReviewAt <= day(now);
        expect(due).toBe(state === 'review-due');
        expect(of.inARow).toBeLessThanOrEqual(neededInARow);
      }),
    );
  });
});
