import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, test } from 'vitest';
import { markText } from '@/components/grading/mark-text';
import type { Viewer } from '@/lib/auth/policy';
import { getAttemptResult, submitAttempt, listStudentAssignments } from '@/lib/data/attempts';
import type { AssignmentPolicy } from '@/lib/data/assignment-input';
import { db } from '@/lib/data/db';
import {
  excuse,
  exportGradebookCsv,
  extendDue,
  getGradebook,
  getStudentRecord,
  overrideMark,
} from '@/lib/data/gradebook';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  answerFor,
  codeOf,
  dueAt,
  makeSchool,
  monday,
  published,
  started,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

/** A submitted attempt whose mark is set to a round number, as if the grader had said so. */
async function marked(assignmentId: string, total: number, clock = monday): Promise<string> {
  const attemptId = await started(school.ann, assignmentId);
  const submission = await answerFor(attemptId, 'best');
  valueOf(
    await submitAttempt(
      school.ann,
      attemptId,
      { submission, idempotencyKey: `key-${attemptId}` },
      clock,
    ),
  );
  await db().mark.updateMany({ where: { attemptId }, data: { total } });
  return attemptId;
}

async function cellOf(assignmentId: string, student = school.ann, clock = monday) {
  const gradebook = await getGradebook(school.owner, school.classId, clock);
  const cell = gradebook?.cells.find(
    (candidate) =>
      candidate.assignmentId === assignmentId && candidate.studentId === student.studentId,
  );
  if (cell === undefined)
    throw new Error('the gradebook has a cell for every student and assignment');
  return cell;
}

describe('what counts', () => {
  // Marks 85 (25 h late: 68.0 by the grading rules), then 60 in time.
  // An average belongs to all of them: its last attempt stands for it.
  test.each<[AssignmentPolicy['counting'], number, 0 | 1]>([
    ['best', 68, 0],
    ['first', 68, 0],
    ['last', 60, 1],
    ['average', 64, 1],
  ])('%s, and the attempt behind it', async (counting, mark, which) => {
    const assignmentId = await published(school, { counting, attemptsAllowed: null });
    const attempts = [
      await marked(assignmentId, 85, afterDue(25)),
      await marked(assignmentId, 60),
    ] as const;
    const cell = await cellOf(assignmentId);
    expect(cell.mark).toBeCloseTo(mark, 10);
    expect(cell).toMatchObject({
      attempts: 2,
      overridden: false,
      countedAttemptId: attempts[which],
    });
  });

  test('the best is the attempt that is best after lateness, wherever it stands in the row', async () => {
    const assignmentId = await published(school, { counting: 'best', attemptsAllowed: null });
    await marked(assignmentId, 40);
    const best = await marked(assignmentId, 75);
    // 85 less 20 % is 68.
    await marked(assignmentId, 85, afterDue(25));
    expect(await cellOf(assignmentId)).toMatchObject({ mark: 75, countedAttemptId: best });
  });

  test('a mark set by hand leads to the attempt that would have counted without it', async () => {
    const assignmentId = await published(school, { counting: 'first', attemptsAllowed: null });
    const first = await marked(assignmentId, 30);
    await marked(assignmentId, 80);
    valueOf(
      await overrideMark(school.owner, {
        studentId: school.ann.studentId,
        assignmentId,
        mark: 55,
        note: 'Saw it done at the telescope.',
      }),
    );
    expect(await cellOf(assignmentId)).toMatchObject({ mark: 55, countedAttemptId: first });
  });

  test('what is handed in and not marked yet can be looked at, and what is open cannot', async () => {
    const assignmentId = await published(school, { attemptsAllowed: null });
    const handedIn = await marked(assignmentId, 80);
    await db().mark.deleteMany({ where: { attemptId: handedIn } });
    await started(school.ann, assignmentId);
    expect(await cellOf(assignmentId)).toMatchObject({
      mark: null,
      attempts: 2,
      underWay: true,
      countedAttemptId: handedIn,
    });
    expect((await cellOf(assignmentId, school.ben)).countedAttemptId).toBeNull();
  });

  test('raw mark and penalty stand beside the mark', async () => {
    const assignmentId = await published(school);
    await marked(assignmentId, 85, afterDue(25));
    const cell = await cellOf(assignmentId);
    expect(cell.raw).toBe(85);
    expect(cell.latePenalty).toBeCloseTo(0.2, 12);
    expect(cell.state).toBe('not-yet');
  });
});

// Days × share and mark × share are not exact in binary: 100 × (1 − 0.35) is 64.99999999999999.
test.each([
  [100, 0.05, 7, 65],
  [90, 0.1, 3, 63],
])(
  '%d marks less %d a day for %d days reaches a pass mark of %d on every page',
  async (total, latePenaltyPerDay, days, passMark) => {
    const assignmentId = await published(school, {
      latePenaltyPerDay,
      latePenaltyCap: 1,
      passMark,
    });
    const clock = afterDue(24 * days - 1);
    const attemptId = await marked(assignmentId, total, clock);
    expect(await cellOf(assignmentId, school.ann, clock)).toMatchObject({
      mark: passMark,
      state: 'complete',
    });
    const listed = await listStudentAssignments(school.ann, clock);
    expect(listed.find((entry) => entry.assignmentId === assignmentId)).toMatchObject({
      mark: passMark,
      state: 'complete',
    });
    expect((await getAttemptResult(school.ann, attemptId, clock))?.mark).toBe(passMark);
    const record = await getStudentRecord(school.owner, school.ann.studentId, clock);
    expect(record?.attempts.find((entry) => entry.attemptId === attemptId)?.countedMark).toBe(
      passMark,
    );
  },
);

describe('states', () => {
  test('not started, in progress, missing, complete', async () => {
    const assignmentId = await published(school);
    expect((await cellOf(assignmentId)).state).toBe('not-started');
    expect((await cellOf(assignmentId, school.ann, afterDue(0))).state).toBe('not-started');
    expect((await cellOf(assignmentId, school.ann, afterDue(0.001))).state).toBe('missing');
    await started(school.ann, assignmentId);
    expect((await cellOf(assignmentId)).state).toBe('in-progress');
    await marked(assignmentId, 70);
    expect((await cellOf(assignmentId, school.ann, afterDue(99))).state).toBe('complete');
  });

  test('an extension moves the time from which work is missing', async () => {
    const assignmentId = await published(school);
    const later = afterDue(48).now().toISOString();
    valueOf(
      await extendDue(school.owner, {
        studentId: school.ben.studentId,
        assignmentId,
        dueAt: later,
        note: 'Ill.',
      }),
    );
    expect(await cellOf(assignmentId, school.ben, afterDue(47))).toMatchObject({
      state: 'not-started',
      extendedDueAt: later,
    });
    expect((await cellOf(assignmentId, school.ann, afterDue(47))).state).toBe('missing');
    valueOf(
      await extendDue(school.owner, {
        studentId: school.ben.studentId,
        assignmentId,
        dueAt: null,
        note: 'Well again.',
      }),
    );
    expect((await cellOf(assignmentId, school.ben, afterDue(47))).state).toBe('missing');
  });

  test("a group's extension holds for its members, and the student's own goes before it", async () => {
    const assignmentId = await published(school);
    const group = await db().group.create({
      data: {
        classId: school.classId,
        name: 'Blue table',
        members: { create: { studentId: school.cy.studentId } },
      },
    });
    const changedAt = monday.now();
    await db().extension.create({
      data: {
        assignmentId,
        groupId: group.id,
        dueAt: afterDue(10).now(),
        note: 'Trip.',
        changedAt,
      },
    });
    expect((await cellOf(assignmentId, school.cy, afterDue(9))).state).toBe('not-started');
    expect((await cellOf(assignmentId, school.ann, afterDue(9))).state).toBe('missing');
    valueOf(
      await extendDue(school.owner, {
        studentId: school.cy.studentId,
        assignmentId,
        dueAt,
        note: 'Was not there.',
      }),
    );
    expect((await cellOf(assignmentId, school.cy, afterDue(9))).state).toBe('missing');
  });
});

describe('decisions of the teacher', () => {
  test('an override stands over the computed mark, which is kept and comes back', async () => {
    const assignmentId = await published(school);
    const attemptId = await marked(assignmentId, 40);
    const target = { studentId: school.ann.studentId, assignmentId };
    valueOf(
      await overrideMark(
        school.colleague,
        { ...target, mark: 75, note: 'Explained it aloud.' },
        monday,
      ),
    );
    expect(await cellOf(assignmentId)).toMatchObject({
      mark: 75,
      raw: 40,
      overridden: true,
      state: 'complete',
    });
    const [listed] = (await listStudentAssignments(school.ann, monday)).filter(
      (item) => item.assignmentId === assignmentId,
    );
    expect(listed).toMatchObject({ mark: 75, state: 'complete' });
    const shown = await getAttemptResult(school.ann, attemptId, monday);
    expect(shown).toMatchObject({ mark: 40, markByHand: 75 });
    expect((await db().mark.findMany({ where: { attemptId } })).map(({ total }) => total)).toEqual([
      40,
    ]);
    valueOf(
      await overrideMark(school.owner, { ...target, mark: null, note: 'Talked it over.' }, monday),
    );
    expect(await cellOf(assignmentId)).toMatchObject({
      mark: 40,
      overridden: false,
      state: 'not-yet',
    });
    expect((await getAttemptResult(school.ann, attemptId, monday))?.markByHand).toBeNull();

    const audit = await db().audit.findMany({
      where: {
        classId: school.classId,
        action: 'mark-overridden',
        subject: { contains: assignmentId },
      },
      orderBy: { at: 'asc' },
    });
    expect(audit.map(({ teacherId, reason }) => [teacherId, reason])).toEqual([
      [school.colleague.teacherId, 'Explained it aloud.'],
      [school.owner.teacherId, 'Talked it over.'],
    ]);
    expect(audit[1]?.before).toMatchObject({ mark: 75 });
  });

  test.each([
    ['no note', { mark: 50, note: ' ' }, 'note'],
    ['a mark over 100', { mark: 101, note: 'x' }, 'mark'],
    ['a mark that is no number', { mark: Number.NaN, note: 'x' }, 'mark'],
  ])('%s is refused, and the mark stays', async (_, wrong, field) => {
    const assignmentId = await published(school);
    const target = { studentId: school.ben.studentId, assignmentId };
    expect(await overrideMark(school.owner, { ...target, ...wrong })).toMatchObject({
      problem: { field },
    });
    expect((await cellOf(assignmentId, school.ben)).overridden).toBe(false);
  });

  test('excused and not excused again; the override is left alone', async () => {
    const assignmentId = await published(school);
    const target = { studentId: school.ben.studentId, assignmentId };
    valueOf(
      await overrideMark(school.owner, { ...target, mark: 80, note: 'Shown at the telescope.' }),
    );
    valueOf(await excuse(school.owner, { ...target, note: 'Away.' }));
    expect((await cellOf(assignmentId, school.ben)).state).toBe('excused');
    valueOf(await excuse(school.owner, { ...target, note: 'Back.', excused: false }));
    expect(await cellOf(assignmentId, school.ben)).toMatchObject({ state: 'complete', mark: 80 });
  });

  test("another class's student and this class's assignment do not go together", async () => {
    const assignmentId = await published(school);
    const target = { studentId: school.dee.studentId, assignmentId };
    expect(codeOf(await overrideMark(school.owner, { ...target, mark: 1, note: 'x' }))).toBe(
      'not-found',
    );
    expect(codeOf(await excuse(school.owner, { ...target, note: 'x' }))).toBe('not-found');
  });
});

test.each([
  ['a mark', overrideMark],
  ['an excuse', excuse],
  ['a due time', extendDue],
])('%s for nobody that can be named is not found, whatever else is wrong', async (_, decision) => {
  const assignmentId = await published(school);
  const { studentId } = school.ben;
  const sent: unknown[] = [
    { studentId: { not: '' }, assignmentId, note: 'x' },
    { studentId, assignmentId: { contains: '' }, note: 'x' },
    { studentId: null, assignmentId: 7 },
    {},
  ];
  // As a request brings it: the server cannot know what the types promise.
  const call = async (viewer: Viewer, input: unknown): Promise<unknown> => {
    const answer: unknown = await Reflect.apply(decision, undefined, [viewer, input]);
    return answer;
  };
  const notFound = { ok: false, problem: { code: 'not-found' } };
  for (const input of sent) expect(await call(school.owner, input)).toMatchObject(notFound);
  const wrong = { studentId, assignmentId, note: '', mark: 'much', dueAt: 'later' };
  expect(await call(school.owner, wrong)).toMatchObject({ problem: { code: 'bad-input' } });
  expect(await call(school.stranger, wrong)).toMatchObject(notFound);
});

test('the record of a student shows every attempt with its raw and its counted mark', async () => {
  const assignmentId = await published(school);
  const attemptId = await marked(assignmentId, 90, afterDue(1));
  const record = await getStudentRecord(school.observer, school.ann.studentId, afterDue(2));
  const attempt = record?.attempts.find((candidate) => candidate.attemptId === attemptId);
  expect(attempt).toMatchObject({ assignmentId, mode: 'check', number: 1, late: true, mark: 90 });
  expect(attempt?.countedMark).toBeCloseTo(81, 10);
});

describe('the spreadsheet', () => {
  test('has a row for each student, numbers as numbers, and no formulas', async () => {
    // As an older version may have stored it: today's roster refuses such a name.
    await db().student.update({
      where: { id: school.cy.studentId },
      data: { displayName: '=HYPERLINK("x")' },
    });
    const text = await exportGradebookCsv(school.owner, school.classId, monday);
    expect(text?.startsWith('\uFEFF')).toBe(true);
    const rows: string[][] = parse(text ?? '', { bom: true });
    expect(rows[0]?.slice(0, 3)).toEqual(['Card', 'Name', 'Pick the pair']);
    expect(rows.slice(1).map((row) => row.slice(0, 2))).toEqual([
      ['1', 'Ann'],
      ['2', 'Ben'],
      ['3', `'=HYPERLINK("x")`],
    ]);
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
  });

  test('shows a mark as the page does, and never rounds up to a pass', async () => {
    const assignmentId = await published(school, {}, monday, { title: 'Close to it' });
    await marked(assignmentId, 69.97);
    const text = await exportGradebookCsv(school.owner, school.classId, monday);
    const rows: string[][] = parse(text ?? '', { bom: true });
    const column = rows[0]?.indexOf('Close to it') ?? -1;
    expect(rows[1]?.slice(column, column + 2)).toEqual([markText(69.97), 'not yet passed']);
    expect(rows[1]?.[column]).toBe('69.9');
  });
});
