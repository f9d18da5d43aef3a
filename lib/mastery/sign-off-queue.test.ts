import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { KnownNote, OutgoingNote } from './sign-off-note';
import {
  applyAnswers,
  drop,
  markTried,
  nextToSend,
  noteDown,
  notesOf,
  readWaiting,
  retry,
  secondsBeforeTry,
  settle,
  undo,
  type Ledger,
} from './sign-off-queue';

const nothing: Ledger = { waiting: [], known: [] };
const key = (letter: string): string => letter.repeat(32);
const note = (letter: string, change: Partial<OutgoingNote> = {}): OutgoingNote => ({
  kind: 'note',
  key: key(letter),
  studentId: 'ann',
  skill: 'level',
  level: 3,
  gates: [],
  prompts: 0,
  note: '',
  instrument: 'Wren',
  over: null,
  conditions: { light: 'night', cloud: 'clear' },
  observedAt: '2026-12-05T20:00:00Z',
  ...change,
});
const known = (letter: string, change: Partial<KnownNote> = {}): KnownNote => ({
  key: key(letter),
  studentId: 'ann',
  skill: 'level',
  level: 3,
  gates: [],
  prompts: 0,
  note: '',
  evening: '2026-12-05',
  mine: true,
  ...change,
});
const levels = (ledger: Ledger): number[] =>
  notesOf(ledger, 'ann', 'level', 'Europe/London').map(({ level }) => level);
const keysOf = (ledger: Ledger): string[] => ledger.waiting.map(({ item }) => item.key);

test('what is noted is seen at once, as waiting, in its evening', () => {
  const ledger = noteDown(nothing, [note('a', { observedAt: '2026-12-06T00:30:00Z' })]);
  expect(notesOf(ledger, 'ann', 'level', 'Europe/London')).toMatchObject([
    { level: 3, evening: '2026-12-05', mine: true, waiting: true },
  ]);
  expect(notesOf(ledger, 'ben', 'level', 'Europe/London')).toEqual([]);
  expect(notesOf(ledger, 'ann', 'align', 'Europe/London')).toEqual([]);
});

test('the queue goes out oldest first, and so many at once', () => {
  const ledger = noteDown(noteDown(nothing, [note('a'), note('b')]), [note('c')]);
  expect(nextToSend(ledger, 2).map((one) => one.key)).toEqual([key('a'), key('b')]);
});

test('what was stored waits no longer and takes the place of what it replaced', () => {
  const over = { keys: [key('o')], how: 'replace' as const };
  const before = noteDown({ ...nothing, known: [known('o', { level: 1 })] }, [note('a', { over })]);
  expect(levels(before)).toEqual([3]);
  const after = applyAnswers(before, [
    { outcome: 'stored', key: key('a'), known: known('a'), gone: [key('o')] },
  ]);
  expect(after.waiting).toEqual([]);
  expect(levels(after)).toEqual([3]);
});

test('an answer to something that waits no longer changes nothing', () => {
  const answer = { outcome: 'stored', key: key('a'), known: known('a'), gone: [] } as const;
  expect(applyAnswers(nothing, [{ ...answer, gone: [] }])).toEqual(nothing);
});

describe('undo', () => {
  it('forgets a note that was never sent', () => {
    const ledger = noteDown(nothing, [note('a'), note('b')]);
    expect(keysOf(undo(ledger, [note('b')]))).toEqual([key('a')]);
  });
  it('takes back a note that may have arrived, and brings back what it replaced', () => {
    const over = { keys: [key('o')], how: 'replace' as const };
    const sent = markTried(noteDown(nothing, [note('a', { over })]), [key('a')]);
    expect(undo(sent, [note('a', { over })]).waiting).toEqual([
      {
        tried: false,
        state: { kind: 'queued' },
        item: { kind: 'take-back', key: key('a'), restores: [key('o')] },
      },
    ]);
  });
  it('takes back a note that was stored', () => {
    const ledger = undo({ ...nothing, known: [known('a')] }, [note('a')]);
    expect(levels(ledger)).toEqual([]);
    expect(nextToSend(ledger, 9)).toMatchObject([{ kind: 'take-back', key: key('a') }]);
    const done = applyAnswers(ledger, [
      { outcome: 'taken-back', key: key('a'), back: [known('o', { level: 2 })] },
    ]);
    expect(levels(done)).toEqual([2]);
  });
  it('of a note in conflict only gives it up: it is not on the server', () => {
    const ledger = applyAnswers(markTried(noteDown(nothing, [note('a')]), [key('a')]), [
      { outcome: 'conflict', key: key('a'), existing: [known('o')] },
    ]);
    expect(undo(ledger, [note('a')]).waiting).toEqual([]);
  });
});

describe('a conflict', () => {
  const existing = [known('o', { level: 1 })];
  const ledger = applyAnswers(
    noteDown({ ...nothing, known: existing }, [note('a'), note('b', { studentId: 'ben' })]),
    [{ outcome: 'conflict', key: key('a'), existing }],
  );
  it('waits, overwrites nothing and stops nothing behind it', () => {
    expect(levels(ledger)).toEqual([1]);
    expect(nextToSend(ledger, 9).map((one) => one.key)).toEqual([key('b')]);
  });
  it('is settled by keeping the old', () => {
    expect(keysOf(settle(ledger, key('a'), 'keep-old'))).toEqual([key('b')]);
  });
  it('is settled by taking the new, or both, which says so when it is sent again', () => {
    const [first] = nextToSend(settle(ledger, key('a'), 'take-new'), 1);
    expect(first).toMatchObject({ key: key('a'), over: { keys: [key('o')], how: 'replace' } });
    const both = settle(ledger, key('a'), 'keep-both');
    expect(nextToSend(both, 1)).toMatchObject([{ over: { keys: [key('o')], how: 'beside' } }]);
    expect(levels(both)).toEqual([1, 3]);
  });
});

test('what was refused is shown with why, and is given up or sent once more', () => {
  const ledger = applyAnswers(noteDown(nothing, [note('a')]), [
    { outcome: 'refused', key: key('a'), message: 'The clock is ahead.' },
  ]);
  expect(nextToSend(ledger, 9)).toEqual([]);
  expect(nextToSend(retry(ledger, key('a')), 9)).toHaveLength(1);
  expect(drop(ledger, key('a')).waiting).toEqual([]);
});

test('the queue survives being written down and read', () => {
  const ledger = noteDown(nothing, [note('a'), { kind: 'take-back', key: key('b'), restores: [] }]);
  const { waiting, unread } = readWaiting(JSON.stringify(ledger.waiting));
  expect(waiting).toEqual(ledger.waiting);
  expect(unread).toEqual([]);
  expect(readWaiting(null)).toEqual({ waiting: [], unread: [] });
});

test('an item that cannot be read is told apart and takes none of the others along', () => {
  const { waiting } = noteDown(nothing, [note('a'), note('b')]);
  const strange = { item: { kind: 'note' } };
  const [first, second] = waiting;
  expect(readWaiting(JSON.stringify([first, strange, second]))).toEqual({
    waiting,
    unread: [strange],
  });
  expect(readWaiting('not JSON')).toEqual({ waiting: [], unread: ['not JSON'] });
  expect(readWaiting('7')).toEqual({ waiting: [], unread: [7] });
});

test('however often answers come, and in whatever order, nothing that waits is lost or doubled', () => {
  const letters = ['a', 'b', 'c', 'd'] as const;
  const answered = fc.array(fc.constantFrom(...letters));
  fc.assert(
    fc.property(answered, (order) => {
      const start = noteDown(
        nothing,
        letters.map((letter) => note(letter)),
      );
      const end = applyAnswers(
        start,
        order.map((letter) => ({
          outcome: 'stored' as const,
          key: key(letter),
          known: known(letter),
          gone: [],
        })),
      );
      const all = [...keysOf(end), ...end.known.map((one) => one.key)];
      expect(all.toSorted()).toEqual(letters.map(key));
    }),
  );
});

test('waiting between tries grows to a minute and no further', () => {
  expect([0, 1, 2, 3, 5, 6, 40].map(secondsBeforeTry)).toEqual([2, 2, 4, 8, 32, 60, 60]);
});
