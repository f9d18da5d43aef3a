import { beforeAll, describe, expect, test } from 'vitest';
import {
  createAssignment,
  getAssignment,
  listAssignments,
  publishAssignment,
  updateAssignment,
} from '@/lib/data/assignments';
import { copyAssignment } from '@/lib/data/assignment-copy';
import { extendDueOf, extendGroupDue, listExtensions } from '@/lib/data/assignment-extensions';
import { getPreviewTask, lookInPreview, markPreview } from '@/lib/data/assignment-preview';
import { getAttemptKey } from '@/lib/data/attempt-key';
import {
  getAttemptResult,
  getOpenAttempt,
  listStudentAssignments,
  startAttempt,
  startPractice,
  submitAttempt,
} from '@/lib/data/attempts';
import { createClass } from '@/lib/data/classes';
import { db } from '@/lib/data/db';
import { overrideMark } from '@/lib/data/gradebook';
import { setExtraAttempts } from '@/lib/data/roster';
import type { Viewer } from '@/lib/auth/policy';
import { benchTemplates } from '@/lib/variants/bench/bench-labs';
import { benchTasks, rightAnswersOf } from '../support/lab-work';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  assignmentInput,
  codeOf,
  dueAt,
  labPart,
  makeSchool,
  monday,
  partsOf,
  published,
  started,
  startPart,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

const three = {
  title: 'A first evening',
  parts: [
    labPart('level', benchTemplates.level, { weight: 3 }),
    labPart('lesson-questions', ['level-enough'], { windowMinutes: 0 }),
    labPart('lesson-questions', ['the-night'], { windowMinutes: 0, weight: 0 }),
  ],
  lessons: ['level-enough' as const, 'the-night' as const],
};
const set = (change = {}) => published(school, change, monday, three);

const everybody = [
  'owner',
  'colleague',
  'observer',
  'stranger',
  'ann',
  'ben',
  'dee',
  'anonymous',
] as const;
type Who = (typeof everybody)[number];
const members: Who[] = ['owner', 'colleague', 'observer'];
const teachers: Who[] = ['owner', 'colleague'];
const allowed = async (may: (viewer: Viewer) => Promise<boolean>): Promise<Who[]> => {
  const found: Who[] = [];
  for (const who of everybody) if (await may(school[who])) found.push(who);
  return found;
};

const standing = async (viewer: Viewer, assignmentId: string, clock = monday) => {
  const all = await listStudentAssignments(viewer, clock);
  const found = all.find((one) => one.assignmentId === assignmentId);
  if (found === undefined) throw new Error('the assignment is not listed');
  return found;
};

/** Hands in so many right answers of the eight; the rest stay open. */
async function answer(viewer: Viewer, attemptId: string, right: number) {
  const { answers } = await rightAnswersOf(attemptId);
  const submission = { answers: answers.slice(0, right) };
  const sent = { submission, idempotencyKey: `key-of-${attemptId}` };
  return valueOf(await submitAttempt(viewer, attemptId, sent, monday));
}

const levelled = benchTasks.find(({ lab }) => lab === 'level');

describe('an assignment of three parts', () => {
  test('goes from start to mark, each part by itself and the whole by their weights', async () => {
    const assignmentId = await set();
    expect(await standing(school.ann, assignmentId)).toMatchObject({
      state: 'not-started',
      mark: null,
      lessons: ['level-enough', 'the-night'],
      parts: [
        { lab: 'level', weight: 3, state: 'not-started' },
        { lab: 'lesson-questions', weight: 1 },
        { lab: 'lesson-questions', weight: 0 },
      ],
    });

    const level = await started(school.ann, assignmentId);
    expect((await getOpenAttempt(school.ann, level))?.title).toBe('A first evening: Level');
    const submission = await levelled?.answer(level);
    const sent = { submission, idempotencyKey: 'levelled-well' };
    valueOf(await submitAttempt(school.ann, level, sent, monday));
    // What is not done yet is left out, never taken for nothing; nor is the whole complete.
    expect(await standing(school.ann, assignmentId)).toMatchObject({
      state: 'in-progress',
      mark: 100,
      parts: [{ state: 'complete', mark: 100 }, { mark: null }, { mark: null }],
    });

    await answer(school.ann, await started(school.ann, assignmentId, monday, 1), 4);
    await answer(school.ann, await started(school.ann, assignmentId, monday, 2), 0);
    const done = await standing(school.ann, assignmentId);
    expect(done.parts.map(({ mark }) => mark)).toEqual([100, 50, 0]);
    // By hand: (3 · 100 + 1 · 50 + 0 · 0) / 4.
    expect(done.mark).toBeCloseTo(87.5, 9);
    expect(done.state).toBe('complete');
    expect((await getAttemptResult(school.ann, level, monday))?.partId).toBe(
      (await partsOf(assignmentId))[0],
    );
  });

  test('counts attempts for each part, extra ones too', async () => {
    const assignmentId = await set({ attemptsAllowed: 1 });
    await answer(school.ben, await started(school.ben, assignmentId, monday, 1), 1);
    expect(codeOf(await startPart(school.ben, assignmentId, monday, 1))).toBe('no-attempts-left');
    expect(codeOf(await startPart(school.ben, assignmentId, monday, 2))).toBe('ok');
    valueOf(await setExtraAttempts(school.owner, school.ben.studentId, 1));
    expect(codeOf(await startPart(school.ben, assignmentId, monday, 1))).toBe('ok');
    valueOf(await setExtraAttempts(school.owner, school.ben.studentId, 0));
  });

  test('gives one attempt more for each that was given back, and says so', async () => {
    const assignmentId = await set({ attemptsAllowed: 1 });
    const attemptId = await started(school.cy, assignmentId, monday, 1);
    await answer(school.cy, attemptId, 1);
    await db().attempt.update({
      where: { id: attemptId },
      data: { returnedAt: monday.now() },
    });
    const back = await standing(school.cy, assignmentId);
    expect(back.state).toBe('returned');
    expect(back.parts[1]).toMatchObject({ state: 'returned', attemptsUsed: 1, attemptsAllowed: 2 });
    const next = await getOpenAttempt(school.cy, await started(school.cy, assignmentId, monday, 1));
    expect(next).toMatchObject({ attemptNumber: 2, attemptsAllowed: 2 });
    await answer(school.cy, next?.id ?? '', 8);
    const again = await standing(school.cy, assignmentId);
    expect(again.parts[1]).toMatchObject({ state: 'complete', mark: 100 });
    expect(codeOf(await startPart(school.cy, assignmentId, monday, 1))).toBe('no-attempts-left');
  });

  test('starts no part of another assignment, nor a lesson', async () => {
    const assignmentId = await set();
    const [elsewhere = ''] = await partsOf(await set());
    expect(codeOf(await startAttempt(school.ann, assignmentId, elsewhere, monday))).toBe(
      'not-found',
    );
    const lesson = await db().assignmentPart.findFirstOrThrow({
      where: { assignmentId, kind: 'lesson' },
    });
    expect(codeOf(await startAttempt(school.ann, assignmentId, lesson.id, monday))).toBe(
      'not-found',
    );
  });

  test('is practised part by part', async () => {
    const assignmentId = await set();
    const [, , partId = ''] = await partsOf(assignmentId);
    const { attemptId } = valueOf(
      await startPractice(school.ann, { assignmentId, partId }, monday),
    );
    const open = await getOpenAttempt(school.ann, attemptId);
    if (open?.lab !== 'lesson-questions') throw new Error('a practice of another lab');
    expect(open.variant.lessons).toEqual(['the-night']);
  });

  test('bows to a mark set by hand', async () => {
    const assignmentId = await set();
    const decision = { studentId: school.ann.studentId, assignmentId, note: 'Shown in class.' };
    valueOf(await overrideMark(school.owner, { ...decision, mark: 90 }, monday));
    expect(await standing(school.ann, assignmentId)).toMatchObject({
      state: 'complete',
      mark: 90,
      markByHand: true,
    });
  });
});

describe('changing the parts', () => {
  const input = (parts: object[]) => ({ ...assignmentInput(), ...three, parts });
  const stored = async (assignmentId: string) =>
    (await getAssignment(school.owner, assignmentId))?.parts ?? [];

  test('turns them round, weighs them anew and adds one, with work under way', async () => {
    const assignmentId = await set();
    const attemptId = await started(school.ann, assignmentId, monday, 1);
    const before = await stored(assignmentId);
    const [one, two, three_] = before;
    const added = labPart('power', benchTemplates.power, { weight: 5 });
    const next = input([added, { ...two, weight: 4 }, { ...one }, { ...three_ }]);
    expect(valueOf(await updateAssignment(school.owner, assignmentId, next))).toEqual({
      attemptsUnderWay: 1,
    });
    const after = await stored(assignmentId);
    expect(after.map(({ lab, weight }) => [lab, weight])).toEqual([
      ['power', 5],
      ['lesson-questions', 4],
      ['level', 3],
      ['lesson-questions', 0],
    ]);
    expect(after.slice(1).map(({ id }) => id)).toEqual([two?.id, one?.id, three_?.id]);
    const resumed = await started(school.ann, assignmentId, monday, 1);
    expect(resumed).toBe(attemptId);
  });

  test('takes away what nobody started, and refuses what somebody did, changing nothing', async () => {
    const assignmentId = await set();
    await started(school.ann, assignmentId, monday, 1);
    const [one, two, three_] = await stored(assignmentId);
    const refusals = [
      [input([{ ...one }, { ...three_ }]), 'parts'],
      [
        input([{ ...one }, { ...labPart('balance', benchTemplates.balance), id: two?.id }]),
        'parts.1.lab',
      ],
    ] as const;
    for (const [next, field] of refusals) {
      const refused = await updateAssignment(school.owner, assignmentId, {
        ...next,
        title: 'Another title',
      });
      expect(refused).toMatchObject({ ok: false, problem: { code: 'part-has-work', field } });
    }
    expect(await getAssignment(school.owner, assignmentId)).toMatchObject({
      title: 'A first evening',
      version: 2,
    });
    valueOf(await updateAssignment(school.owner, assignmentId, input([{ ...two }])));
    expect((await stored(assignmentId)).map(({ id }) => id)).toEqual([two?.id]);
  });

  test.each([
    ['no part at all', { parts: [] }, 'parts'],
    ['thirteen parts', { parts: Array.from({ length: 13 }, () => three.parts[1]) }, 'parts'],
    [
      'nothing that counts',
      { parts: [labPart('level', benchTemplates.level, { weight: 0 })] },
      'parts',
    ],
    ['a lesson that is none', { lessons: ['sundials'] }, 'lessons.0'],
    ['a lesson twice', { lessons: ['the-night', 'the-night'] }, 'lessons'],
    ['a weight of the assignment above 100', { weight: 101 }, 'weight'],
  ])('%s is refused', async (_, change, field) => {
    const all = { ...assignmentInput(), ...three, ...change };
    const refused = await createAssignment(school.owner, school.classId, all, monday);
    expect(refused).toMatchObject({ ok: false, problem: { code: 'bad-input', field } });
  });
});

describe('a copy', () => {
  const copyTo = async (
    viewer: Viewer,
    assignmentId: string,
    classId: string,
    due: string | null,
  ) => copyAssignment(viewer, assignmentId, { classId, title: 'A copy', dueAt: due }, monday);

  test('is a draft with the same parts, lessons, evening and rules, and nobody’s work', async () => {
    const assignmentId = await set({ feedback: 'after-due' });
    await started(school.ann, assignmentId);
    const made = valueOf(
      await createClass(
        school.owner,
        {
          name: 'Year 8 b',
          timeZone: 'America/Chicago',
        },
        monday,
      ),
    );
    const copy = valueOf(await copyTo(school.owner, assignmentId, made.classId, null));
    const [before, after] = [
      await getAssignment(school.owner, assignmentId),
      await getAssignment(school.owner, copy.assignmentId),
    ];
    const bare = (parts: { id: string }[] = []) => parts.map((part) => ({ ...part, id: '' }));
    expect(bare(after?.parts)).toEqual(bare(before?.parts));
    expect(after).toMatchObject({
      title: 'A copy',
      state: 'draft',
      classId: made.classId,
      attemptsUnderWay: 0,
      lessons: three.lessons,
      scenario: before?.scenario,
      dueTimeZone: 'America/Chicago',
      // Feedback after a due time that is not there would come at once: it waits for the teacher.
      policy: { ...before?.policy, dueAt: null, feedback: 'when-released' },
    });
    // The two know nothing of each other.
    const changed = { ...assignmentInput(), title: 'Changed' };
    valueOf(await updateAssignment(school.owner, copy.assignmentId, changed));
    expect((await getAssignment(school.owner, assignmentId))?.parts).toHaveLength(3);
  });

  test('takes a due time of its own, in the same class too', async () => {
    const assignmentId = await set();
    const later = afterDue(7 * 24)
      .now()
      .toISOString();
    const copy = valueOf(await copyTo(school.owner, assignmentId, school.classId, later));
    expect((await getAssignment(school.owner, copy.assignmentId))?.policy.dueAt).toBe(later);
    expect((await listAssignments(school.owner, school.classId))?.at(-1)).toMatchObject({
      labs: ['level', 'lesson-questions', 'lesson-questions'],
      lessonCount: 2,
    });
  });

  test('needs a teacher of both classes', async () => {
    const assignmentId = await set();
    const may = async (classId: string) =>
      allowed(async (viewer) => (await copyTo(viewer, assignmentId, classId, null)).ok);
    expect(await may(school.classId)).toEqual(teachers);
    expect(await may(school.otherClassId)).toEqual([]);
  });
});

describe('more time', () => {
  const later = (hours: number) => afterDue(hours).now().toISOString();
  const makeGroup = async (name: string, studentIds: string[]) => {
    const data = { classId: school.classId, name };
    const { id } = await db().group.create({ data, select: { id: true } });
    await db().groupMember.createMany({
      data: studentIds.map((studentId) => ({ groupId: id, studentId })),
    });
    return id;
  };

  test('for groups: the latest of a student’s groups holds, and an own one stands over it', async () => {
    const assignmentId = await set();
    const { studentId } = school.ann;
    const wrens = await makeGroup('Wrens', [studentId, school.ben.studentId]);
    const owls = await makeGroup('Owls', [studentId]);
    const give = (groupId: string, due: string | null) =>
      extendGroupDue(school.owner, { groupId, assignmentId, dueAt: due, note: 'Cloud.' }, monday);
    valueOf(await give(wrens, later(24)));
    valueOf(await give(owls, later(48)));
    const dueOf = async (viewer: Viewer) => (await standing(viewer, assignmentId)).dueAt;
    expect(await dueOf(school.ann)).toBe(later(48));
    expect(await dueOf(school.ben)).toBe(later(24));
    expect(await dueOf(school.cy)).toBe(dueAt);
    expect(codeOf(await startPart(school.ben, assignmentId, afterDue(23), 1))).toBe('ok');
    expect(codeOf(await startPart(school.cy, assignmentId, afterDue(23), 1))).toBe(
      'too-late-to-start',
    );

    const own = { kind: 'student' as const, id: studentId, assignmentId, note: 'As agreed.' };
    valueOf(await extendDueOf(school.owner, { ...own, dueAt: later(2) }, monday));
    expect(await dueOf(school.ann)).toBe(later(2));
    const changedAt = monday.now().toISOString();
    expect((await listExtensions(school.owner, assignmentId))?.given).toEqual([
      { kind: 'group', id: owls, name: 'Owls', dueAt: later(48), note: 'Cloud.', changedAt },
      { kind: 'group', id: wrens, name: 'Wrens', dueAt: later(24), note: 'Cloud.', changedAt },
      {
        kind: 'student',
        id: studentId,
        name: 'Ann',
        dueAt: later(2),
        note: 'As agreed.',
        changedAt,
      },
    ]);

    const unseen = { kind: 'group' as const, id: owls, assignmentId, note: 'x', openedOn: null };
    for (const stale of [unseen, { ...own, openedOn: null }]) {
      const answer = await extendDueOf(school.owner, { ...stale, dueAt: later(9) }, monday);
      expect(codeOf(answer)).toBe('changed-meanwhile');
    }
    const seen = { ...own, openedOn: changedAt };
    valueOf(await extendDueOf(school.owner, { ...seen, dueAt: null }, monday));
    valueOf(await give(owls, null));
    expect(await dueOf(school.ann)).toBe(later(24));
    const trail = await db().audit.findMany({ where: { action: 'group-due-extended' } });
    expect(trail.map(({ after }) => after)).toEqual([
      { dueAt: later(24) },
      { dueAt: later(48) },
      { dueAt: null },
    ]);
  });

  test('needs a note, and a group of the class', async () => {
    const assignmentId = await set();
    const group = await makeGroup('Herons', [school.ann.studentId]);
    const bare = { groupId: group, assignmentId, dueAt: later(1), note: ' ' };
    expect(codeOf(await extendGroupDue(school.owner, bare))).toBe('bad-input');
    const other = await db().group.create({ data: { classId: school.otherClassId, name: 'X' } });
    const elsewhere = { ...bare, groupId: other.id, note: 'Why not.' };
    expect(codeOf(await extendGroupDue(school.owner, elsewhere))).toBe('not-found');
  });

  test('is given and seen by the owner and the teachers alone', async () => {
    const assignmentId = await set();
    const groupId = await makeGroup('Larks', [school.ann.studentId]);
    const decision = { groupId, assignmentId, dueAt: later(1), note: 'Rain.' };
    expect(
      await allowed(async (viewer) => (await extendGroupDue(viewer, decision, monday)).ok),
    ).toEqual(teachers);
    expect(
      await allowed(async (viewer) => (await listExtensions(viewer, assignmentId)) !== null),
    ).toEqual(teachers);
  });
});

describe('a look as a student', () => {
  test('gives a task, marks it and keeps nothing', async () => {
    const assignmentId = await set();
    const counts = async () => [await db().attempt.count(), await db().event.count()];
    const before = await counts();
    for (const [index, partId] of (await partsOf(assignmentId)).entries()) {
      const address = { assignmentId, partId, round: '1' };
      const task = await getPreviewTask(school.owner, address);
      expect(task).toMatchObject({ lab: three.parts[index]?.lab, placeName: 'Keswick' });
      expect(task).not.toHaveProperty('answerKey');
      expect(await getPreviewTask(school.owner, address)).toEqual(task);
      expect(await getPreviewTask(school.owner, { ...address, round: '2' })).not.toEqual(task);
    }
    const [, partId = ''] = await partsOf(assignmentId);
    const sent = { submission: { answers: [] }, idempotencyKey: 'a look only' };
    const marked = valueOf(
      await markPreview(school.owner, { assignmentId, partId, round: '1' }, sent),
    );
    expect(marked).toMatchObject({ lab: 'lesson-questions', total: 0 });
    expect(await counts()).toEqual(before);
  });

  test('gives out evidence piece by piece where a lab does', async () => {
    const assignmentId = await published(school, {}, monday, {
      title: 'A riddle',
      parts: [labPart('what-went-wrong', ['first-slews'])],
    });
    const [partId = ''] = await partsOf(assignmentId);
    const address = { assignmentId, partId, round: '1' };
    expect(codeOf(await lookInPreview(school.owner, address, 'no such thing'))).toBe('bad-input');
    expect(codeOf(await lookInPreview(school.owner, address, 'outcome'))).toBe('ok');
    expect(
      await allowed(async (viewer) => (await lookInPreview(viewer, address, 'outcome')).ok),
    ).toEqual(members);
  });

  test('is for the class’s teachers, of a draft too; never for a student', async () => {
    const { assignmentId } = valueOf(
      await createAssignment(
        school.owner,
        school.classId,
        { ...assignmentInput(), ...three },
        monday,
      ),
    );
    const [, partId = ''] = await partsOf(assignmentId);
    const address = { assignmentId, partId, round: '1' };
    const sent = { submission: { answers: [] }, idempotencyKey: 'a look only' };
    expect(
      await allowed(async (viewer) => (await getPreviewTask(viewer, address)) !== null),
    ).toEqual(members);
    expect(await allowed(async (viewer) => (await markPreview(viewer, address, sent)).ok)).toEqual(
      members,
    );
    valueOf(await publishAssignment(school.owner, assignmentId, monday));
    expect(await getPreviewTask(school.ann, address)).toBeNull();
  });
});

test('the key of a student’s own task is for the class’s teachers, while it is open too', async () => {
  const assignmentId = await published(school);
  const attemptId = await started(school.ann, assignmentId);
  const key = await getAttemptKey(school.owner, attemptId);
  expect(key).toMatchObject({ studentName: 'Ann', isOpen: true, attemptNumber: 1 });
  const open = await getOpenAttempt(school.ann, attemptId);
  if (open?.lab !== 'pick-the-pair' || key?.task.lab !== 'pick-the-pair')
    throw new Error('a task of another lab');
  expect(key.sky?.frame).toEqual(open.variant.frame);
  expect(key.task.variants.map(({ template }) => template)).toEqual([open.variant.template]);
  expect(key.task.variants[0]?.sample).toEqual(key.sky?.key.pairs[0]);
  expect(
    await allowed(async (viewer) => (await getAttemptKey(viewer, attemptId)) !== null),
  ).toEqual(members);
});
