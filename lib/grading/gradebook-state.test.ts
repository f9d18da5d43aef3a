import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { passes } from '../mastery/evidence';
import { reachesPassMark } from '../mastery/pass-mark';
import { gradebookState, type GradebookState } from './gradebook-state';

const start: Parameters<typeof gradebookState>[0] = {
  excused: false,
  mark: null,
  passMark: 70,
  gateFailed: false,
  resultShown: true,
  late: false,
  submitted: false,
  underWay: false,
  dueAtMs: 1000,
  nowMs: 500,
};

describe('the state of a student and an assignment', () => {
  test.each<[string, Partial<typeof start>, GradebookState]>([
    ['nothing done', {}, 'not-started'],
    ['begun', { underWay: true }, 'in-progress'],
    ['at the due time', { nowMs: 1000 }, 'not-started'],
    ['past the due time', { nowMs: 1001 }, 'missing'],
    ['begun and past the due time', { underWay: true, nowMs: 1001 }, 'missing'],
    ['no due time', { dueAtMs: null, nowMs: 1e12 }, 'not-started'],
    ['excused, whatever else', { excused: true, mark: 90, submitted: true }, 'excused'],
    ['at the pass mark', { mark: 70, submitted: true }, 'complete'],
    ['below the pass mark', { mark: 69.999, submitted: true }, 'not-yet'],
    [
      'at the pass mark but for the noise of a sum',
      { passMark: 70.3, mark: 70.1 + 0.1 + 0.1, submitted: true },
      'complete',
    ],
    ['short of it by more than noise', { mark: 69.9999999, submitted: true }, 'not-yet'],
    ['passed, but late', { mark: 80, submitted: true, late: true, nowMs: 2000 }, 'complete'],
    ['passed, not to be shown', { mark: 80, submitted: true, resultShown: false }, 'submitted'],
    [
      'late, not to be shown',
      { mark: 80, submitted: true, late: true, resultShown: false },
      'late',
    ],
    [
      'a failed gate, whatever the mark',
      { mark: 95, submitted: true, gateFailed: true },
      'not-yet',
    ],
    [
      'a failed gate where any mark passes',
      { mark: 0, passMark: 0, submitted: true, gateFailed: true },
      'not-yet',
    ],
    ['a mark by the teacher alone', { mark: 75, nowMs: 2000 }, 'complete'],
    ['given back, whatever the mark', { mark: 90, submitted: true, returned: true }, 'returned'],
    [
      'given back, and the result not to be shown',
      { mark: 90, submitted: true, resultShown: false, returned: true },
      'returned',
    ],
    ['excused and given back', { excused: true, submitted: true, returned: true }, 'excused'],
    [
      'one part passed, another open past the due time',
      { mark: 90, submitted: true, partMissing: true, underWay: true, nowMs: 2000 },
      'in-progress',
    ],
    [
      'one part passed, another not begun at the due time',
      { mark: 90, submitted: true, partMissing: true, partUntouched: true, nowMs: 1000 },
      'in-progress',
    ],
    [
      'one part passed, another not begun past the due time',
      { mark: 90, submitted: true, partMissing: true, partUntouched: true, nowMs: 1001 },
      'missing',
    ],
    [
      'the same, and the teacher has set the mark',
      { mark: 90, submitted: true, partMissing: false, partUntouched: true, nowMs: 1001 },
      'complete',
    ],
    ['nothing of it handed in, past the due time', { partMissing: true, nowMs: 2000 }, 'missing'],
    [
      'passed, the skill not signed off',
      { mark: 90, submitted: true, needsSignOff: true },
      'needs-sign-off',
    ],
    ['not passed, nor signed off', { mark: 50, submitted: true, needsSignOff: true }, 'not-yet'],
    ['nothing done, nor signed off', { needsSignOff: true }, 'not-started'],
  ])('%s', (_, change, state) => {
    expect(gradebookState({ ...start, ...change })).toBe(state);
  });
});

describe('passing', () => {
  // Tenths, as a teacher gives them: nothing here lies within the noise of a sum.
  const tenths = fc.integer({ min: 0, max: 1000 }).map((tenth) => tenth / 10);
  const work = fc.record({
    mark: fc.oneof(fc.constant(0), tenths),
    passMark: fc.oneof(fc.constant(0), tenths),
    gateFailed: fc.boolean(),
  });

  test('is the same in the gradebook as everywhere, and is a mark at the pass mark or above', () => {
    fc.assert(
      fc.property(work, ({ mark, passMark, gateFailed }) => {
        const state = gradebookState({ ...start, mark, passMark, gateFailed, submitted: true });
        const passed = !gateFailed && mark >= passMark;
        expect(state).toBe(passed ? 'complete' : 'not-yet');
        expect(reachesPassMark({ mark, passMark, gateFailed })).toBe(passed);
      }),
    );
  });

  test('shows a skill too, unless nothing was right', () => {
    fc.assert(
      fc.property(work, (one) => {
        expect(passes(one)).toBe(reachesPassMark(one) && one.mark > 0);
      }),
    );
  });

  test('asks for a mark, even where 0 is enough', () => {
    expect(gradebookState({ ...start, passMark: 0, submitted: true })).toBe('submitted');
    expect(gradebookState({ ...start, passMark: 0 })).toBe('not-started');
    expect(gradebookState({ ...start, passMark: 0, mark: 0, submitted: true })).toBe('complete');
  });
});
