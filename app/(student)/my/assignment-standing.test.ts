import { describe, expect, it } from 'vitest';
import { attemptsInWords, isToDo, nextStepOf } from './assignment-standing';

const now = new Date('2026-12-09T20:00:00Z');
const fresh = {
  state: 'not-started',
  dueAt: '2026-12-11T18:00:00Z',
  attemptsUsed: 0,
  attemptsAllowed: 2,
  openAttemptId: null,
} as const;

describe('what a student can do next', () => {
  it('starts what has not been started', () => {
    expect(nextStepOf(fresh, now)).toEqual({ kind: 'start', again: false });
    expect(isToDo(fresh, now)).toBe(true);
  });

  it('goes on with an open attempt, even past the due time and with none left', () => {
    const open = { ...fresh, openAttemptId: 'a', attemptsUsed: 2, dueAt: '2026-12-01T18:00:00Z' };
    expect(nextStepOf(open, now)).toEqual({ kind: 'go-on', attemptId: 'a' });
    expect(isToDo(open, now)).toBe(true);
  });

  it('cannot start when no attempt is left', () => {
    const used = { ...fresh, attemptsUsed: 2, state: 'not-yet' } as const;
    expect(nextStepOf(used, now).kind).toBe('no-attempts-left');
    expect(isToDo(used, now)).toBe(false);
  });

  it('cannot start past the due time', () => {
    const late = { ...fresh, dueAt: '2026-12-09T19:59:59Z', state: 'missing' } as const;
    expect(nextStepOf(late, now).kind).toBe('too-late');
    expect(isToDo(late, now)).toBe(false);
  });

  it('may try again after passing, but need not', () => {
    const passed = { ...fresh, attemptsUsed: 1, state: 'complete' } as const;
    expect(nextStepOf(passed, now)).toEqual({ kind: 'start', again: true });
    expect(isToDo(passed, now)).toBe(false);
  });

  it('asks nothing of whoever is excused', () => {
    const excused = { ...fresh, state: 'excused' } as const;
    expect(nextStepOf(excused, now).kind).toBe('excused');
    expect(isToDo(excused, now)).toBe(false);
  });

  it('says how many attempts are left', () => {
    expect(attemptsInWords(fresh)).toBe('2 attempts');
    expect(attemptsInWords({ ...fresh, attemptsUsed: 1 })).toBe('1 of 2 attempts left');
    expect(attemptsInWords({ ...fresh, attemptsUsed: 2 })).toBe('No attempt left');
    expect(attemptsInWords({ ...fresh, attemptsAllowed: null })).toBe(
      'As many attempts as you like',
    );
  });
});
