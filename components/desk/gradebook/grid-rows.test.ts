import { describe, expect, test } from 'vitest';
import type { Gradebook, GradebookCell } from '@/lib/data/gradebook';
import { gridRows, unpackedRow } from './grid-rows';

const cell = (changes: Partial<GradebookCell>): GradebookCell => ({
  studentId: 'ann',
  assignmentId: 'level',
  state: 'not-started',
  mark: null,
  passMark: 70,
  complete: false,
  excused: false,
  raw: null,
  gateFailed: false,
  latePenalty: null,
  overridden: false,
  attempts: 0,
  underWay: false,
  countedAttemptId: null,
  extendedDueAt: null,
  parts: [],
  toSignOff: [],
  ...changes,
});

const gradebook = (cells: GradebookCell[]): Gradebook => ({
  students: [
    { id: 'ann', displayName: 'Ann', cardNumber: 1, left: false, groupIds: ['wren'], mean: 80 },
  ],
  assignments: cells.map((_, index) => ({
    id: `a${String(index)}`,
    title: 'Level',
    dueAt: null,
    passMark: 70,
    counting: 'best' as const,
    weight: 1,
    needsSignOff: false,
    parts: [],
    mean: null,
  })),
  groups: [],
  cells,
});

describe('a row on its way to the browser', () => {
  test('arrives with the state, the mark and the notes of every cell', () => {
    const packed = gridRows(
      gradebook([
        cell({ state: 'not-started' }),
        cell({ state: 'complete', mark: 80 }),
        cell({ state: 'missing', extendedDueAt: '2026-12-01T18:00:00.000Z' }),
        cell({ state: 'not-yet', mark: 0, overridden: true, latePenalty: 0.1 }),
      ]),
      'Europe/London',
    );
    expect(packed.map(unpackedRow)).toMatchObject([
      {
        id: 'ann',
        name: 'Ann',
        card: 1,
        left: false,
        groups: ['wren'],
        mean: 80,
        cells: [
          { state: 'not-started', mark: '', notes: '' },
          { state: 'complete', mark: '80', notes: '' },
          { state: 'missing', mark: '', notes: expect.stringContaining('own due time') as string },
          {
            state: 'not-yet',
            mark: '0',
            notes: expect.stringMatching(/^set by hand · late/) as string,
          },
        ],
      },
    ]);
  });

  test('says nothing twice and nothing that is not there', () => {
    const packed = gridRows(
      gradebook([cell({ state: 'not-started' }), cell({ state: 'complete', mark: 80 })]),
      'Europe/London',
    );
    expect(packed[0]?.cells).toEqual([['not-started'], ['complete', '80']]);
  });
});
