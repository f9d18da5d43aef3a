import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  countChanges,
  planRoster,
  type PresentStudent,
  type RosterChange,
  type RosterSource,
} from './plan-roster';

const present = (
  studentId: string,
  displayName: string,
  sourcedId: string | null = null,
  left = false,
): PresentStudent => ({ studentId, displayName, sourcedId, left });
const list = (
  entries: readonly (readonly [name: string, sourcedId?: string])[],
  change: Partial<RosterSource> = {},
): RosterSource => ({
  completeness: 'some',
  keepNames: false,
  entries: entries.map(([name, sourcedId], index) => ({
    row: index + 2,
    name,
    sourcedId: sourcedId ?? null,
  })),
  gone: [],
  ...change,
});
const kinds = (changes: readonly RosterChange[]) => changes.map(({ kind }) => kind);

describe('what an import would do', () => {
  it('knows students again by id, and takes the new name', () => {
    expect(planRoster([present('s', 'Ash', '1')], list([['Ash Reed', '1']]))).toEqual([
      {
        kind: 'rename',
        row: 2,
        studentId: 's',
        was: 'Ash',
        name: 'Ash Reed',
        sourcedId: '1',
        learnsId: false,
      },
    ]);
  });

  it('keeps the names here when asked to', () => {
    const kept = list([['Ash Reed', '1']], { keepNames: true });
    expect(planRoster([present('s', 'Comet', '1')], kept)).toMatchObject([
      { kind: 'same', name: 'Comet' },
    ]);
  });

  it('knows students again by name, and gives them the id, where there is one of that name', () => {
    expect(planRoster([present('s', 'ASH')], list([['Ash', '1']]))).toMatchObject([
      { kind: 'same', name: 'ASH', sourcedId: '1', learnsId: true },
    ]);
    expect(
      kinds(planRoster([present('s', 'Ash'), present('t', 'Ash')], list([['Ash', '1']]))),
    ).toEqual(['add', 'untouched', 'untouched']);
    expect(
      kinds(
        planRoster(
          [present('s', 'Ash')],
          list([
            ['Ash', '1'],
            ['Ash', '2'],
          ]),
        ),
      ),
    ).toEqual(['add', 'add', 'untouched']);
  });

  it('brings back who had left, with the same work', () => {
    expect(kinds(planRoster([present('s', 'Ash', '1', true)], list([['Ash', '1']])))).toEqual([
      'back',
    ]);
    expect(kinds(planRoster([present('s', 'Ash', null, true)], list([['Ash']])))).toEqual(['back']);
  });

  it('marks as left whom a whole class file leaves out, if the file ever named them', () => {
    const class8 = [present('s', 'Ash', '1'), present('t', 'Lou', '2'), present('u', 'By hand')];
    const whole = list([['Ash', '1']], { completeness: 'whole-class' });
    expect(kinds(planRoster(class8, whole))).toEqual(['same', 'leave', 'untouched']);
    expect(kinds(planRoster(class8, list([['Ash', '1']])))).toEqual([
      'same',
      'untouched',
      'untouched',
    ]);
  });

  it('marks as left whom a file of changes says have left', () => {
    expect(kinds(planRoster([present('s', 'Ash', '1')], list([], { gone: ['1', '9'] })))).toEqual([
      'leave',
    ]);
  });
});

/** Carries a plan out, as the server does. */
function done(students: readonly PresentStudent[], changes: readonly RosterChange[]) {
  const after = new Map(students.map((student) => [student.studentId, student]));
  for (const [index, change] of changes.entries()) {
    if (change.kind === 'untouched') continue;
    if (change.kind === 'add') {
      const studentId = `new ${String(after.size)} ${String(index)}`;
      after.set(studentId, present(studentId, change.name, change.sourcedId));
      continue;
    }
    const before = after.get(change.studentId);
    if (before === undefined) throw new Error('a change of nobody');
    after.set(
      change.studentId,
      change.kind === 'leave'
        ? { ...before, left: true }
        : { ...before, displayName: change.name, sourcedId: change.sourcedId, left: false },
    );
  }
  return [...after.values()];
}

const name = fc.constantFrom('Ash', 'ash', 'Lou', 'Kit', 'Zoë');
const id = fc.option(fc.constantFrom('1', '2', '3', '4', '5'), { nil: null });
const distinctIds = <T extends { sourcedId: string | null }>(rows: readonly T[]): T[] => {
  const seen = new Set<string>();
  return rows.filter(({ sourcedId }) => {
    if (sourcedId === null) return true;
    const first = !seen.has(sourcedId);
    seen.add(sourcedId);
    return first;
  });
};
const students = fc
  .array(fc.record({ displayName: name, sourcedId: id, left: fc.boolean() }), { maxLength: 7 })
  .map((rows) =>
    distinctIds(rows).map((row, index) => ({ studentId: `s${String(index)}`, ...row })),
  );
const source: fc.Arbitrary<RosterSource> = fc.record({
  completeness: fc.constantFrom('whole-class', 'some'),
  keepNames: fc.boolean(),
  entries: fc
    .array(fc.record({ name, sourcedId: id }), { maxLength: 7 })
    .map((rows) => distinctIds(rows).map((row, index) => ({ row: index + 1, ...row }))),
  gone: fc.constant([]),
});

describe('for any class and any list', () => {
  it('importing twice is importing once', () => {
    fc.assert(
      fc.property(students, source, (class8, file) => {
        const after = done(class8, planRoster(class8, file));
        const again = planRoster(after, file);
        const { add, rename, back, leave } = countChanges(again);
        expect({ add, rename, back, leave }).toEqual({ add: 0, rename: 0, back: 0, leave: 0 });
        expect(done(after, again)).toEqual(after);
      }),
      { numRuns: 500 },
    );
  });

  it('nobody is lost, nobody is two students of the list, and no id stands twice', () => {
    fc.assert(
      fc.property(students, source, (class8, file) => {
        const changes = planRoster(class8, file);
        const after = done(class8, changes);
        const ids = after.flatMap(({ sourcedId }) => sourcedId ?? []);
        expect(new Set(ids).size).toBe(ids.length);
        const meant = changes.flatMap((change) => (change.kind === 'add' ? [] : change.studentId));
        expect(new Set(meant).size).toBe(meant.length);
        for (const { studentId } of class8) {
          expect(after.some((student) => student.studentId === studentId)).toBe(true);
        }
        expect(after.filter(({ left }) => !left).length).toBeGreaterThanOrEqual(
          file.entries.length,
        );
      }),
      { numRuns: 500 },
    );
  });
});
