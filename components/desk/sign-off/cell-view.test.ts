import { expect, test } from 'vitest';
import type { KnownNote } from '@/lib/mastery/sign-off-note';
import { cellView, cellWords } from './cell-view';

const known = (key: string, evening: string, level: KnownNote['level']): KnownNote => ({
  key: key.repeat(32),
  studentId: 'ann',
  skill: 'level',
  level,
  gates: [],
  prompts: 0,
  note: '',
  evening,
  mine: key === 'a',
});
const of = { studentId: 'ann', skill: 'level', timeZone: 'Europe/London', needed: 3 } as const;

test('where two saw the latest evening the better level shows, since it is the one that counts', () => {
  const notes = [
    known('a', '2026-12-05', 4),
    known('b', '2026-12-05', 2),
    known('c', '2026-12-01', 3),
  ];
  const view = cellView({ waiting: [], known: notes }, of);
  expect(view).toMatchObject({ level: 4, evenings: 2, standing: { signedOff: true } });
  expect(cellWords(view, false)).toBe('last at level 4, 2 of 2 evenings, signed off');
});
