import { describe, expect, test } from 'vitest';
import { liveRules, standingNow, type HandedIn, type LiveFacts } from './live-standing';

const start = Date.parse('2026-11-30T09:00:00Z');
/** Minutes and seconds into the lesson. */
const at = (minutes: number, seconds = 0): Date =>
  new Date(start + minutes * 60_000 + seconds * 1000);

const nobody: LiveFacts = {
  lastSeenAt: null,
  signedOut: false,
  open: null,
  question: null,
  reading: null,
  answers: [],
  handedIn: [],
};
const open: NonNullable<LiveFacts['open']> = {
  attemptId: 'a',
  assignmentId: 'x',
  lab: 'level',
  mode: 'check',
  title: 'Level',
  part: null,
  stage: null,
  startedAt: at(0),
  lastStepAt: at(0),
};
const work = (minutes: number, passed: boolean, gateFailed = false): HandedIn => ({
  attemptId: `h${String(minutes)}`,
  assignmentId: 'x',
  lab: 'level',
  mode: 'check',
  title: 'Level',
  at: at(minutes),
  passed,
  gateFailed,
});
const lesson = 'level-enough' as const;
const answers = (...right: boolean[]) =>
  right.map((passed, index) => ({ lesson, passed, at: at(index) })).toReversed();

describe('open work', () => {
  const facts = { ...nobody, lastSeenAt: at(0), open };

  test('is being worked at until six minutes went by without a step', () => {
    expect(standingNow(facts, at(5, 59))).toMatchObject({
      state: 'working',
      since: at(0),
      need: null,
      last: { what: 'started', at: at(0) },
      place: { kind: 'attempt', lab: 'level' },
      assignmentId: 'x',
    });
    expect(standingNow(facts, at(6))).toMatchObject({
      state: 'needs-help',
      need: { why: 'no-new-step', since: at(0) },
    });
  });

  test('counts from the last step, not from the start', () => {
    const later = { ...facts, open: { ...open, lastStepAt: at(4) } };
    expect(standingNow(later, at(9, 59))).toMatchObject({
      state: 'working',
      last: { what: 'step', at: at(4) },
    });
    expect(standingNow(later, at(10))).toMatchObject({ need: { since: at(4) } });
  });

  test('is not left by sitting still, but by signing out or a whole period without a sign', () => {
    expect(standingNow(facts, at(liveRules.lessonMinutes - 1)).state).toBe('needs-help');
    expect(standingNow(facts, at(liveRules.lessonMinutes)).state).toBe('away');
    expect(standingNow({ ...facts, signedOut: true }, at(1)).place).toEqual({
      kind: 'away',
      signedOut: true,
    });
  });

  test('of another day is not where somebody is now', () => {
    const yesterday = { ...open, lastStepAt: at(-1440), startedAt: at(-1440) };
    expect(standingNow({ ...facts, open: yesterday }, at(1)).place).toEqual({
      kind: 'nothing-open',
    });
  });

  test('begun before this period and gone on with today has no "since"', () => {
    const resumed = { ...open, startedAt: at(-1440), lastStepAt: at(0) };
    expect(standingNow({ ...facts, open: resumed }, at(1))).toMatchObject({ since: null });
  });
});

describe('questions of a lesson', () => {
  test('wait four minutes for an answer before anybody is called', () => {
    const facts = { ...nobody, lastSeenAt: at(0), question: { lesson, askedAt: at(0) } };
    expect(standingNow(facts, at(3, 59)).state).toBe('working');
    expect(standingNow(facts, at(4))).toMatchObject({
      state: 'needs-help',
      need: { why: 'no-answer', since: at(0) },
    });
  });

  test('answered wrongly three times in a row call; a right one between them does not', () => {
    const three = { ...nobody, answers: answers(true, false, false, false) };
    expect(standingNow(three, at(4)).need).toEqual({ why: 'wrong-in-a-row', count: 3 });
    const two = { ...nobody, answers: answers(false, false, true, false, false) };
    expect(standingNow(two, at(5))).toMatchObject({ state: 'working', need: null, since: at(0) });
  });
});

describe('what was handed in', () => {
  test('is done, and stays so when its student has left', () => {
    const facts = { ...nobody, lastSeenAt: at(3), handedIn: [work(3, true)] };
    const done = { state: 'done', place: { kind: 'handed-in', passed: true }, need: null };
    expect(standingNow(facts, at(4))).toMatchObject(done);
    expect(standingNow({ ...facts, signedOut: true }, at(30))).toMatchObject(done);
  });

  test('calls when a safety gate failed in it, whatever the mark', () => {
    const facts = { ...nobody, lastSeenAt: at(3), handedIn: [work(3, false, true)] };
    expect(standingNow(facts, at(4))).toMatchObject({
      state: 'needs-help',
      need: { why: 'gate' },
    });
  });

  test('calls when it did not pass twice in a row, also once the third try is open', () => {
    const twice = [work(6, false), work(3, false), work(1, true)];
    const facts = { ...nobody, lastSeenAt: at(6), handedIn: twice };
    const need = { why: 'not-yet-again', count: 2 };
    expect(standingNow(facts, at(7)).need).toEqual(need);
    const third = { ...open, startedAt: at(8), lastStepAt: at(8) };
    expect(standingNow({ ...facts, open: third }, at(9)).need).toEqual(need);
    expect(standingNow({ ...facts, handedIn: twice.slice(1) }, at(9)).need).toBeNull();
  });
});

test('without open work a quarter of an hour of silence is absence, and nobody seen is away', () => {
  const facts = { ...nobody, lastSeenAt: at(0) };
  expect(standingNow(facts, at(14, 59)).state).toBe('here');
  expect(standingNow(facts, at(15)).state).toBe('away');
  expect(standingNow(nobody, at(0))).toMatchObject({ state: 'away', last: null });
});

test('whatever happened last decides where somebody is', () => {
  const reading = { lesson, at: at(5) };
  const facts = { ...nobody, lastSeenAt: at(5), open, handedIn: [work(3, true)], reading };
  expect(standingNow(facts, at(6)).place).toEqual({ kind: 'reading', lesson });
  const back = { ...open, lastStepAt: at(6) };
  expect(standingNow({ ...facts, open: back }, at(7)).place.kind).toBe('attempt');
});
