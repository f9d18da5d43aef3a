import { beforeAll, expect, test } from 'vitest';
import { saveDraft, startPractice, submitAttempt } from '@/lib/data/attempts';
import { deleteAssignment } from '@/lib/data/assignments';
import { deleteClass } from '@/lib/data/classes';
import { db } from '@/lib/data/db';
import { excuse, extendDue } from '@/lib/data/gradebook';
import { nextQuestion } from '@/lib/data/questions';
import {
  addStudents,
  exportStudent,
  issueCards,
  removeStudent,
  setExtraAttempts,
} from '@/lib/data/roster';
import { endSessionById, openSession } from '@/lib/data/sessions';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  answerFor,
  codeOf,
  makeSchool,
  monday,
  published,
  started,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
let assignmentId: string;

const lastSessionOf = async (studentId: string) =>
  (await db().session.findFirstOrThrow({ where: { studentId }, select: { id: true } })).id;

/** Something of every kind that can hang on a student, and on the class. */
beforeAll(async () => {
  school = await makeSchool();
  assignmentId = await published(school);
  const { classId } = school;
  const group = await db().group.create({
    data: {
      classId,
      name: 'Wren',
      kitId: 'wren',
      members: {
        create: [{ studentId: school.ann.studentId }, { studentId: school.ben.studentId }],
      },
    },
    select: { id: true },
  });
  await db().extension.create({
    data: {
      assignmentId,
      groupId: group.id,
      note: 'Cloudy.',
      changedAt: monday.now(),
      dueAt: afterDue(48).now(),
    },
  });
  await db().coverLink.create({
    data: {
      classId,
      tokenHash: 'a cover link',
      createdById: school.owner.teacherId,
      createdAt: monday.now(),
      expiresAt: afterDue(0).now(),
      sessions: {
        create: {
          tokenHash: 'a cover session',
          device: 'A browser',
          createdAt: monday.now(),
          lastSeenAt: monday.now(),
        },
      },
    },
  });
  await db().invitation.create({
    data: {
      kind: 'teacher',
      tokenHash: 'an invitation',
      classId,
      role: 'observer',
      createdAt: monday.now(),
      expiresAt: afterDue(0).now(),
    },
  });
  for (const student of [school.ann, school.ben]) {
    const { studentId } = student;
    valueOf(await issueCards(school.owner, school.classId, [studentId]));
    const attemptId = await started(student, assignmentId);
    const draft = { picks: [], saysNone: false, proposalIndex: 0 };
    valueOf(await saveDraft(student, attemptId, { sequence: 1, draft }, monday));
    const submission = await answerFor(attemptId, 'middling');
    valueOf(
      await submitAttempt(student, attemptId, { submission, idempotencyKey: 'key-of-it' }, monday),
    );
    valueOf(await startPractice(student, {}, monday));
    valueOf(await nextQuestion(student, { lesson: 'choosing-alignment-stars' }, monday));
    const target = { studentId, assignmentId, note: 'Needed more time.' };
    valueOf(await excuse(school.owner, target));
    valueOf(await extendDue(school.owner, { ...target, dueAt: afterDue(24).now().toISOString() }));
    valueOf(await setExtraAttempts(school.owner, studentId, 2));
    await openSession({ studentId }, { device: 'A browser', previousToken: null }, monday);
    valueOf(await endSessionById(student, await lastSessionOf(studentId), monday));
    await db().observation.create({
      data: {
        studentId,
        assessorId: school.owner.teacherId,
        skill: 'align',
        level: 3,
        gates: [],
        instrument: 'Wren',
        conditions: { night: true },
        note: '',
        observedAt: monday.now(),
        receivedAt: monday.now(),
        key: `seen-${studentId}`,
      },
    });
    await db().comment.create({
      data: {
        attemptId,
        teacherId: school.owner.teacherId,
        changedAt: monday.now(),
        text: 'Look at the height once more.',
      },
    });
    await db().attempt.update({ where: { id: attemptId }, data: { returnedAt: monday.now() } });
  }
});

const everybody = () => [
  school.classId,
  ...[school.ann, school.ben, school.cy].map(({ studentId }) => studentId),
];

/** How many rows of each kind there are, of one student or of all. */
async function rows(studentId?: string): Promise<Record<string, number>> {
  const of = studentId === undefined ? {} : { studentId };
  const ofAttempt = studentId === undefined ? {} : { attempt: { studentId } };
  return {
    attempts: await db().attempt.count({ where: of }),
    events: await db().event.count({ where: ofAttempt }),
    marks: await db().mark.count({ where: ofAttempt }),
    comments: await db().comment.count({ where: ofAttempt }),
    groups: await db().groupMember.count({ where: of }),
    overrides: await db().override.count({ where: of }),
    extensions: await db().extension.count({ where: of }),
    accommodations: await db().accommodation.count({ where: of }),
    observations: await db().observation.count({ where: of }),
    questions: await db().askedQuestion.count({ where: of }),
    sessions: await db().session.count({ where: of }),
    securityEvents: await db().securityEvent.count({
      where: studentId === undefined ? { subject: { in: everybody() } } : { subject: studentId },
    }),
  };
}
const nothing = (counts: Record<string, number>) =>
  Object.values(counts).every((count) => count === 0);

test('the export of a student holds all of it and no secret', async () => {
  const kept = await exportStudent(school.owner, school.ann.studentId, { accommodations: true });
  expect(kept).toMatchObject({ displayName: 'Ann', accommodation: { extraAttempts: 2 } });
  const text = JSON.stringify(kept);
  for (const part of [
    'Needed more time.',
    '"kind":"draft"',
    '"total":',
    '"skill":"align"',
    'Look at the height once more.',
    '"kitId":"wren"',
    '"returnedAt":"2026-11-30',
    '"submission":{',
    '"lesson":"choosing-alignment-stars"',
  ]) {
    expect(text).toContain(part);
  }
  expect(text).not.toContain('argon2');
  expect(text).not.toContain('tokenHash');
  expect(text).not.toContain(school.ben.studentId);
});

test('a note that was taken back is no longer said of the student', async () => {
  const note = { studentId: school.ben.studentId, key: 'taken-back' };
  const [kept] = await db().observation.findMany({ where: { studentId: note.studentId } });
  if (kept === undefined) throw new Error('a note was made');
  await db().observation.create({
    data: {
      ...kept,
      id: undefined,
      ...note,
      note: 'The wrong child.',
      gates: [],
      conditions: {},
      retractedAt: monday.now(),
    },
  });
  const text = JSON.stringify(await exportStudent(school.owner, note.studentId));
  expect(text).toContain('"skill":"align"');
  expect(text).not.toContain('The wrong child.');
});

test('a removed student is gone with everything, the others keep theirs, and the card number is not given again', async () => {
  const ben = await rows(school.ben.studentId);
  expect(Object.values(ben)).not.toContain(0);
  valueOf(await removeStudent(school.owner, school.ann.studentId));
  expect(nothing(await rows(school.ann.studentId))).toBe(true);
  expect(await rows(school.ben.studentId)).toEqual(ben);
  const logs = [await db().audit.findMany(), await db().securityEvent.findMany()];
  expect(JSON.stringify(logs)).not.toContain(school.ann.studentId);
  const { studentIds } = valueOf(await addStudents(school.owner, school.classId, ['Eve']));
  const eve = await db().student.findUnique({ where: { id: studentIds[0] ?? '' } });
  expect(eve?.cardNumber).toBe(4);
  expect(codeOf(await removeStudent(school.owner, school.ann.studentId))).toBe('not-found');
});

test('a deleted assignment takes its attempts, decisions and scenario along', async () => {
  const gone = await published(school);
  await started(school.ben, gone);
  const before = await db().scenario.count();
  valueOf(await deleteAssignment(school.owner, gone));
  expect(await db().scenario.count()).toBe(before - 1);
  expect(await db().attempt.count({ where: { assignmentId: gone } })).toBe(0);
  expect(await db().attempt.count({ where: { assignmentId } })).toBe(1);
});

test('a deleted class leaves nothing but its teachers', async () => {
  valueOf(await deleteClass(school.owner, school.classId));
  expect(nothing(await rows())).toBe(true);
  const { classId } = school;
  expect(await db().student.count({ where: { classId } })).toBe(0);
  expect(await db().assignment.count()).toBe(0);
  expect(await db().assignmentPart.count()).toBe(0);
  expect(await db().scenario.count()).toBe(0);
  expect(await db().scenarioVersion.count()).toBe(0);
  expect(await db().audit.count()).toBe(0);
  expect(await db().group.count()).toBe(0);
  expect(await db().coverLink.count()).toBe(0);
  expect(await db().invitation.count()).toBe(0);
  expect(await db().session.count({ where: { coverId: { not: null } } })).toBe(0);
  const log = JSON.stringify(await db().securityEvent.findMany());
  for (const id of everybody()) expect(log).not.toContain(id);
  expect(await db().classMember.count({ where: { classId } })).toBe(0);
  expect(await db().teacher.count({ where: { id: school.owner.teacherId } })).toBe(1);
  expect(await db().student.count({ where: { classId: school.otherClassId } })).toBe(1);
});
