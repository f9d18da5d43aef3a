import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assignmentMark, studentMean } from './assignment-mark';
import { countedMark, type CountingRule, type MarkedAttempt } from './counted-mark';
import { latePenalty } from './late-penalty';
import { weightedMean } from './weighted-mean';

const mark = fc.double({ min: 0, max: 100, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const attempt: fc.Arbitrary<MarkedAttempt> = fc.record({
  raw: mark,
  latePenalty: share,
  gateFailed: fc.boolean(),
});
const attempts = fc.array(attempt, { minLength: 1, maxLength: 6 });
const rules: readonly CountingRule[] = ['best', 'last', 'first', 'average'];
const left = ({ raw, latePenalty: taken }: MarkedAttempt): number => raw * (1 - taken);
/** Marks are kept to nine decimals. */
const near = (value: number | null | undefined, expected: number) =>
  expect(Math.abs((value ?? NaN) - expected)).toBeLessThan(1e-8);

describe('lateness goes before the rule', () => {
  test('each rule sees what lateness has left of each attempt', () => {
    fc.assert(
      fc.property(attempts, (list) => {
        const safe = list.map((one) => ({ ...one, gateFailed: false }));
        const after = safe.map(left);
        near(countedMark(safe, 'best')?.mark, Math.max(...after));
        near(countedMark(safe, 'first')?.mark, after[0] ?? NaN);
        near(countedMark(safe, 'last')?.mark, after.at(-1) ?? NaN);
        near(
          countedMark(safe, 'average')?.mark,
          after.reduce((sum, value) => sum + value, 0) / after.length,
        );
      }),
    );
  });

  test('the same attempts in time, at what they were worth, come to the same mark', () => {
    fc.assert(
      fc.property(attempts, fc.constantFrom(...rules), (list, rule) => {
        const inTime = list.map((one) => ({ ...one, raw: left(one), latePenalty: 0 }));
        near(countedMark(inTime, rule)?.mark, countedMark(list, rule)?.mark ?? NaN);
      }),
    );
  });

  test('a later hour never makes a mark better, and no more is taken than the cap', () => {
    const hours = fc.double({ min: -48, max: 24 * 30, noNaN: true });
    fc.assert(
      fc.property(hours, hours, share, share, (one, other, penaltyPerDay, cap) => {
        const taken = (late: number) =>
          latePenalty({
            submittedAtMs: late * 3_600_000,
            dueAtMs: 0,
            graceMinutes: 15,
            penaltyPerDay,
            cap,
          }).share;
        expect(taken(Math.max(one, other))).toBeGreaterThanOrEqual(taken(Math.min(one, other)));
        expect(taken(one)).toBeLessThanOrEqual(cap);
        if (one <= 0.25) expect(taken(one)).toBe(0);
      }),
    );
  });

  test('of attempts worth the same the earliest counts as the best', () => {
    fc.assert(
      fc.property(attempt, fc.integer({ min: 1, max: 5 }), (one, copies) => {
        const list = Array.from({ length: copies }, () => ({ ...one }));
        expect(countedMark(list, 'best')?.attempt).toBe(list[0]);
      }),
    );
  });

  test('the order of attempts does not change what the best or the average is worth', () => {
    fc.assert(
      fc.property(attempts, (list) => {
        const turned = [...list].reverse();
        for (const rule of ['best', 'average'] as const) {
          near(countedMark(turned, rule)?.mark, countedMark(list, rule)?.mark ?? NaN);
          expect(countedMark(turned, rule)?.gateFailed).toBe(countedMark(list, rule)?.gateFailed);
        }
      }),
    );
  });

  test('an attempt with a failed gate counts as the best only where all have failed one', () => {
    fc.assert(
      fc.property(attempts, (list) => {
        expect(countedMark(list, 'best')?.gateFailed).toBe(
          list.every(({ gateFailed }) => gateFailed),
        );
      }),
    );
  });
});

const weighted = fc.record({
  weight: fc.integer({ min: 0, max: 100 }),
  excused: fc.boolean(),
  mark: fc.option(mark),
});
const list = fc.array(weighted, { maxLength: 12 });
const counts = (one: { weight: number; excused: boolean; mark: number | null }): boolean =>
  !one.excused && one.mark !== null && one.weight > 0;

describe('the mean by weight', () => {
  test('what is excused, unmarked or weighs nothing could as well not be there', () => {
    fc.assert(
      fc.property(list, (marks) => {
        expect(weightedMean(marks)).toBe(weightedMean(marks.filter(counts)));
      }),
    );
  });

  test('lies between the lowest and the highest of what counts, and is null where nothing does', () => {
    fc.assert(
      fc.property(list, (marks) => {
        const counting = marks.filter(counts).map((one) => one.mark ?? NaN);
        const mean = weightedMean(marks);
        if (counting.length === 0) {
          expect(mean).toBeNull();
          return;
        }
        expect(mean).toBeGreaterThanOrEqual(Math.min(...counting) - 1e-8);
        expect(mean).toBeLessThanOrEqual(Math.max(...counting) + 1e-8);
      }),
    );
  });

  test('depends on how the weights stand to each other alone, and on no order', () => {
    fc.assert(
      fc.property(list, fc.integer({ min: 2, max: 9 }), (marks, factor) => {
        const mean = weightedMean(marks);
        const larger = marks.map((one) => ({ ...one, weight: one.weight * factor }));
        for (const same of [weightedMean(larger), weightedMean([...marks].reverse())]) {
          if (mean === null) expect(same).toBeNull();
          else near(same, mean);
        }
      }),
    );
  });

  test('a mark as good as the mean leaves it where it is', () => {
    fc.assert(
      fc.property(list, fc.integer({ min: 1, max: 100 }), (marks, weight) => {
        const mean = weightedMean(marks);
        fc.pre(mean !== null);
        near(weightedMean([...marks, { weight, excused: false, mark: mean }]), mean);
      }),
    );
  });
});

const part = fc.record({ weight: fc.integer({ min: 1, max: 100 }), attempts: fc.array(attempt) });

describe('an assignment and a student', () => {
  test('an assignment is marked when every part is, and shows the marked ones until then', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const counted = parts.map((one) => ({
          weight: one.weight,
          counted: countedMark(one.attempts, 'best'),
        }));
        const whole = assignmentMark(counted);
        const marked = counted.filter((one) => one.counted !== null);
        expect(whole.allMarked).toBe(marked.length === parts.length);
        expect(whole.mark).toBe(assignmentMark(marked).mark);
        expect(whole.gateFailed).toBe(marked.some((one) => one.counted?.gateFailed === true));
      }),
    );
  });

  test('an assignment without parts has no mark, and not all of it is marked', () => {
    expect(assignmentMark([])).toEqual({ mark: null, allMarked: false, gateFailed: false });
  });

  test('what is not complete waits, whatever its mark so far', () => {
    const complete = { weight: 1, excused: false, mark: 80, complete: true };
    expect(studentMean([complete, { weight: 9, excused: false, mark: 10, complete: false }])).toBe(
      80,
    );
    expect(studentMean([{ ...complete, complete: false }])).toBeNull();
    expect(studentMean([complete, { ...complete, mark: 10, excused: true }])).toBe(80);
  });
});
