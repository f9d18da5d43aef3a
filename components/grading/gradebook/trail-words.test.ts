import { expect, test } from 'vitest';
import { trailWords } from './trail-words';

type Line = Parameters<typeof trailWords>[0];

test.each<[Line, string, string, string]>([
  [
    { action: 'mark-overridden', before: {}, after: { mark: 55.25 } },
    ...(['Mark set by hand', 'computed mark', '55.3'] as const),
  ],
  [
    { action: 'mark-overridden', before: { mark: 55 }, after: { mark: null } },
    ...(['Mark set by hand', '55', 'computed mark'] as const),
  ],
  [
    { action: 'excused', before: { excused: false }, after: { excused: true } },
    ...(['Excuse', 'counts', 'excused'] as const),
  ],
  [
    { action: 'due-extended', before: { dueAt: null }, after: { dueAt: '2026-12-04T18:00:00Z' } },
    ...(['Own due time', 'the class’s', '4 Dec 2026, 18:00'] as const),
  ],
  [
    {
      action: 'regraded',
      before: { total: 60, gateFailed: true, graderVersion: 1 },
      after: { total: 72, gateFailed: false, graderVersion: 2 },
    },
    ...(['Marked again', '60, safety gate failed, grader 1', '72, grader 2'] as const),
  ],
  [
    { action: 'commented', before: { text: null }, after: { text: 'Look higher.' } },
    ...(['Comment', 'none', '“Look higher.”'] as const),
  ],
  [
    {
      action: 'undone',
      before: { mark: 55 },
      after: { mark: null, undoes: 'x', undoneAction: 'mark-overridden' },
    },
    ...(['Undone: mark set by hand', '55', 'computed mark'] as const),
  ],
])('%o', (line, what, before, after) => {
  expect(trailWords(line, 'Europe/London')).toEqual({ what, before, after });
});
