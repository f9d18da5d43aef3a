import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { getCellTrail, undoLastDecision } from '@/lib/data/audit-trail';
import { db } from '@/lib/data/db';
import { getGradebook, overrideMark } from '@/lib/data/gradebook';
import { pairResultSchema } from '@/lib/data/lab-tasks/stored-pair';
import { acceptRegrade, previewRegrade } from '@/lib/data/regrade';
import { handedIn, newestMark } from '../support/marked-work';
import { useSchoolDatabase } from '../support/school-database';
import { at, codeOf, makeSchool, monday, published, valueOf, type School } from '../support/school';

useSchoolDatabase();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

/** Ann's and Ben's work. */
let assignmentId: string;
let work: { ann: string; ben: string };
/** What today's grader gives. */
let real: Awaited<ReturnType<typeof newestMark>>;
beforeEach(async () => {
  assignmentId = await published(school);
  work = {
    ann: await handedIn(school.ann, assignmentId),
    ben: await handedIn(school.ben, assignmentId),
  };
  real = await newestMark(work.ann);
});

/** As if an older grader, or the same one before it was mended, had said so. */
const remember = (attemptId: string, data: { total?: number; graderVersion?: number }) =>
  db().mark.updateMany({ where: { attemptId }, data });

const markOf = async (studentId: string): Promise<number | null | undefined> =>
  (await getGradebook(school.owner, school.classId, monday))?.cells.find(
    (cell) => cell.studentId === studentId && cell.assignmentId === assignmentId,
  )?.mark;

const accept = (accepted: string[], lowered: string[] = [], clock = monday) =>
  acceptRegrade(school.owner, { assignmentId, accepted, lowered }, clock);

describe('the preview', () => {
  test('says nothing where the replay gives the marks that stand, and looks at all work', async () => {
    expect(await previewRegrade(school.owner, assignmentId)).toMatchObject({
      replayed: 2,
      changes: [],
      refused: [],
    });
  });

  test('tells what would rise and what would fall, and changes nothing', async () => {
    const bensReal = (await newestMark(work.ben)).total;
    await remember(work.ann, { total: real.total - 30, graderVersion: 0 });
    await remember(work.ben, { total: real.total + 5, graderVersion: 0 });
    const preview = await previewRegrade(school.colleague, assignmentId);
    expect(
      preview?.changes.map(({ displayName, kind, old, now }) => [displayName, kind, old, now]),
    ).toEqual([
      [
        'Ann',
        'raised',
        { total: real.total - 30, gateFailed: false, graderVersion: 0 },
        { total: real.total, gateFailed: false, graderVersion: real.graderVersion },
      ],
      [
        'Ben',
        'lowered',
        { total: real.total + 5, gateFailed: false, graderVersion: 0 },
        {
          total: bensReal,
          gateFailed: false,
          graderVersion: real.graderVersion,
        },
      ],
    ]);
    expect((await newestMark(work.ann)).graderVersion).toBe(0);
    expect(await db().audit.count({ where: { action: 'regraded' } })).toBe(0);
  });

  test('names the criterion that differs', async () => {
    const stored = pairResultSchema.parse(real.result);
    const [first, ...others] = stored.criteria;
    if (first === undefined) throw new Error('a mark has criteria');
    const result = { ...stored, criteria: [{ ...first, earned: first.earned - 7 }, ...others] };
    await db().mark.updateMany({
      where: { attemptId: work.ann },
      data: { total: real.total - 7, result },
    });
    const preview = await previewRegrade(school.owner, assignmentId);
    expect(preview?.changes[0]?.criteria).toEqual([
      {
        id: first.id,
        old: first.earned - 7,
        now: first.earned,
        possible: first.possible,
      },
    ]);
  });

  test('a gate that was failed and is passed now counts as raised, the mark being the same', async () => {
    await db().mark.updateMany({ where: { attemptId: work.ann }, data: { gateFailed: true } });
    const preview = await previewRegrade(school.owner, assignmentId);
    expect(preview?.changes[0]).toMatchObject({ kind: 'raised', old: { gateFailed: true } });
  });

  test('work that a newer grader has marked keeps its mark', async () => {
    await remember(work.ann, { total: 12, graderVersion: 999 });
    const preview = await previewRegrade(school.owner, assignmentId);
    expect(preview?.refused.map(({ attemptId }) => attemptId)).toEqual([work.ann]);
    expect(valueOf(await accept([work.ann], [work.ann]))).toEqual({ changed: 0, notLowered: 0 });
    expect((await newestMark(work.ann)).total).toBe(12);
  });
});

describe('taking over', () => {
  test('a newer grader adds a mark, keeps the old one, and leaves a line with its version', async () => {
    await remember(work.ann, { total: 10, graderVersion: 0 });
    expect(valueOf(await accept([work.ann]))).toEqual({ changed: 1, notLowered: 0 });
    const marks = await db().mark.findMany({
      where: { attemptId: work.ann },
      orderBy: { graderVersion: 'asc' },
      select: { graderVersion: true, total: true },
    });
    expect(marks).toEqual([
      { graderVersion: 0, total: 10 },
      { graderVersion: real.graderVersion, total: real.total },
    ]);
    expect(await markOf(school.ann.studentId)).toBeCloseTo(real.total, 9);
    const line = await db().audit.findFirstOrThrow({
      where: { action: 'regraded', subject: { contains: work.ann } },
    });
    expect(line).toMatchObject({
      teacherId: school.owner.teacherId,
      graderVersion: real.graderVersion,
      before: { graderVersion: 0, total: 10, gateFailed: false },
      after: { graderVersion: real.graderVersion, total: real.total, gateFailed: false },
    });
  });

  test('the same grader replaces its mark, and undo brings the old one back whole', async () => {
    await remember(work.ann, { total: 10 });
    valueOf(await accept([work.ann]));
    expect(await db().mark.count({ where: { attemptId: work.ann } })).toBe(1);
    expect((await newestMark(work.ann)).total).toBe(real.total);
    const cell = { studentId: school.ann.studentId, assignmentId };
    const trail = await getCellTrail(school.owner, cell);
    valueOf(
      await undoLastDecision(
        school.owner,
        { ...cell, auditId: trail?.lastDecisionId ?? '' },
        at('2026-11-30T10:00:00Z'),
      ),
    );
    expect(await newestMark(work.ann)).toEqual({ ...real, total: 10 });
  });

  test('undo of a newer grader’s mark leaves the one before to count', async () => {
    await remember(work.ann, { total: 10, graderVersion: 0 });
    valueOf(await accept([work.ann]));
    const cell = { studentId: school.ann.studentId, assignmentId };
    const trail = await getCellTrail(school.owner, cell);
    valueOf(
      await undoLastDecision(
        school.owner,
        { ...cell, auditId: trail?.lastDecisionId ?? '' },
        at('2026-11-30T10:00:00Z'),
      ),
    );
    expect(await newestMark(work.ann)).toMatchObject({ graderVersion: 0, total: 10 });
  });

  test('nothing is lowered that was not ticked for it', async () => {
    await remember(work.ann, { total: 10, graderVersion: 0 });
    await remember(work.ben, { total: 100.5, graderVersion: 0 });
    expect(valueOf(await accept([work.ann, work.ben]))).toEqual({ changed: 1, notLowered: 1 });
    expect((await newestMark(work.ben)).total).toBe(100.5);
    expect(valueOf(await accept([], [work.ben]))).toEqual({ changed: 1, notLowered: 0 });
    expect((await newestMark(work.ben)).total).toBeLessThan(100.5);
  });

  test('a mark set by hand stands before and after', async () => {
    const target = { studentId: school.ann.studentId, assignmentId };
    valueOf(await overrideMark(school.owner, { ...target, mark: 33, note: 'Seen.' }, monday));
    for (const total of [10, 60, 99]) {
      await remember(work.ann, { total });
      expect((await previewRegrade(school.owner, assignmentId))?.changes[0]?.markByHand).toBe(33);
      valueOf(await accept([work.ann], [work.ann]));
      expect(await markOf(school.ann.studentId)).toBe(33);
    }
  });

  test('what was not chosen stays; nothing chosen is said; another assignment’s work is not reached', async () => {
    await remember(work.ann, { total: 10 });
    await remember(work.ben, { total: 10 });
    valueOf(await accept([work.ben]));
    expect((await newestMark(work.ann)).total).toBe(10);
    expect(codeOf(await accept([]))).toBe('nothing-chosen');
    const other = await published(school);
    const elsewhere = { assignmentId: other, accepted: [work.ann], lowered: [] };
    expect(valueOf(await acceptRegrade(school.owner, elsewhere, monday)).changed).toBe(0);
    expect((await newestMark(work.ann)).total).toBe(10);
  });
});

test('owner and teacher regrade; nobody else learns of it', async () => {
  await remember(work.ann, { total: 10 });
  const input = { assignmentId, accepted: [work.ann], lowered: [] };
  for (const viewer of [
    school.observer,
    school.stranger,
    school.ann,
    school.ben,
    school.anonymous,
  ]) {
    expect(await previewRegrade(viewer, assignmentId)).toBeNull();
    expect(codeOf(await acceptRegrade(viewer, input, monday))).toBe('not-found');
  }
  expect((await newestMark(work.ann)).total).toBe(10);
  expect(codeOf(await acceptRegrade(school.colleague, input, monday))).toBe('ok');
});
