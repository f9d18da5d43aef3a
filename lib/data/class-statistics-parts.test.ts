import { expect, test } from 'vitest';
import { atTelescope, labFigures } from './class-statistics-parts';
import type { LabResultRow } from './class-statistics-rows';

const row = (studentId: string, earned: readonly [number, number], more = {}): LabResultRow => ({
  studentId,
  attemptId: `of ${studentId}`,
  partId: 'p',
  lab: 'level',
  template: 'one-slope',
  total: earned[0] + earned[1],
  gates: [],
  slips: [],
  criteria: [
    { id: 'tilt', earned: earned[0], possible: 60 },
    { id: 'moves', earned: earned[1], possible: 40 },
  ],
  ...more,
});

test('a lab’s criteria that are all or nothing have KR-20 beside α', () => {
  const rows = [row('a', [60, 40]), row('b', [0, 0]), row('c', [60, 0])];
  const { reliability, criteria } = labFigures(rows, null);
  // By hand: p 2/3 and 1/3, Σpq 4/9, totals 2, 0, 1 with variance 2/3: 2 · (1 − (4/9)/(2/3)).
  expect(reliability?.kr20).toBeCloseTo(2 / 3, 12);
  // Points: variances 800 and 3200/9, totals 100, 0, 60 with variance 15200/9.
  expect(reliability?.reliability).toBeCloseTo(2 * (1 - 10_400 / 15_200), 12);
  expect(criteria.map(({ possible }) => possible)).toEqual([60, 40]);
  const partly = labFigures([...rows, row('d', [30, 0])], null);
  expect(partly.reliability?.kr20).toBeNull();
});

test('a gate that failed twice in one attempt is one student', () => {
  const gates = [{ id: 'leg-left-open' }, { id: 'leg-left-open' }];
  expect(labFigures([row('a', [60, 40], { gates })], null).gates).toEqual([
    { id: 'leg-left-open', attempts: [{ studentId: 'a', attemptId: 'of a' }] },
  ]);
});

test('the line through marks and levels is drawn from thirty students on', () => {
  // 20 marks a level, exactly: signing off at 3 is read off at 2.5.
  const people = (count: number) =>
    Array.from({ length: count }, (_, index) => ({
      studentId: String(index),
      total: 20 * ((index % 4) + 1),
    }));
  const levels = new Map(people(30).map(({ studentId, total }) => [studentId, total / 20]));
  expect(atTelescope(people(29), levels, 3)).toEqual({ people: 29, line: null });
  const { line } = atTelescope(people(30), levels, 3) ?? {};
  expect(line?.cut).toBeCloseTo(50, 9);
  expect(line?.rSquared).toBeCloseTo(1, 9);
  expect(atTelescope(people(30), new Map(), 3)).toBeNull();
});
