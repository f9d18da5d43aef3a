import { beforeAll, describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import * as archive from '@/lib/data/archive';
import * as assignments from '@/lib/data/assignments';
import * as attempts from '@/lib/data/attempts';
import * as classes from '@/lib/data/classes';
import * as cover from '@/lib/data/cover';
import { db } from '@/lib/data/db';
import * as gradebook from '@/lib/data/gradebook';
import * as groups from '@/lib/data/groups';
import * as invitations from '@/lib/data/invitations';
import * as members from '@/lib/data/members';
import * as questions from '@/lib/data/questions';
import * as roster from '@/lib/data/roster';
import * as progress from '@/lib/data/skill-progress';
import * as unlock from '@/lib/data/student-unlock';
import { coverOf } from '../support/cover';
import { useSchoolDatabase } from '../support/school-database';
import {
  answerFor,
  assignmentInput,
  makeSchool,
  makeTeacher,
  monday,
  published,
  startPart,
  started,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();

type Made = School & {
  draftId: string;
  assignmentId: string;
  openId: string;
  submittedId: string;
  questionId: string;
  /** Of the class and of the other one. */
  cover: Extract<Viewer, { kind: 'cover' }>;
  coverElsewhere: Viewer;
  /** A teacher who looks on in the class, to be taken out. */
  goingId: string;
};
let made: Made;

beforeAll(async () => {
  const school = await makeSchool();
  const assignmentId = await published(school);
  const submittedId = await started(school.ann, assignmentId);
  const submission = await answerFor(submittedId, 'best');
  valueOf(
    await attempts.submitAttempt(
      school.ann,
      submittedId,
      { submission, idempotencyKey: 'first-key' },
      monday,
    ),
  );
  const openId = await started(school.ann, assignmentId);
  const draft = valueOf(
    await assignments.createAssignment(school.owner, school.classId, assignmentInput(), monday),
  );
  const question = valueOf(
    await questions.nextQuestion(school.ann, { lesson: 'choosing-alignment-stars' }, monday),
  );
  const { teacherId: goingId } = await makeTeacher('going');
  await db().classMember.create({
    data: { classId: school.classId, teacherId: goingId, role: 'observer' },
  });
  made = {
    goingId,
    ...school,
    draftId: draft.assignmentId,
    assignmentId,
    openId,
    submittedId,
    questionId: question.id,
    cover: (await coverOf(school.owner, school.classId)).viewer,
    coverElsewhere: (await coverOf(school.stranger, school.otherClassId)).viewer,
  };
});

/** null and not-found are the two ways of saying nothing. */
function seesNothing(answer: unknown): boolean {
  if (answer === null) return true;
  return (
    typeof answer === 'object' &&
    'ok' in answer &&
    answer.ok === false &&
    'problem' in answer &&
    typeof answer.problem === 'object' &&
    answer.problem !== null &&
    'code' in answer.problem &&
    answer.problem.code === 'not-found'
  );
}

const everybody = [
  'owner',
  'colleague',
  'observer',
  'stranger',
  'ann',
  'ben',
  'dee',
  'cover',
  'coverElsewhere',
  'anonymous',
] as const;
type Who = (typeof everybody)[number];
const ownerOnly: Who[] = ['owner'];
const teachers: Who[] = ['owner', 'colleague'];
const readers: Who[] = [...teachers, 'observer', 'cover'];

type Case = [name: string, may: Who[], call: (viewer: Viewer) => Promise<unknown>];
const note = 'because';
/** Of each teacher's own: a decision that changes nothing is told so instead of being written. */
const noteOf = (viewer: Viewer): string =>
  `${note} ${viewer.kind === 'teacher' ? viewer.displayName : ''}`;

/** Where two may destroy, each has one of its own. */
const deletable = (viewer: Viewer) =>
  viewer === made.colleague ? made.draftId : made.assignmentId;
const removable = (viewer: Viewer) => (viewer === made.colleague ? made.cy : made.ben).studentId;

/** The ones that destroy come last, deleting the class at the very end. */
const cases: Case[] = [
  ['getClass', readers, (v) => classes.getClass(v, made.classId)],
  ['renameClass', teachers, (v) => classes.renameClass(v, made.classId, 'Year 8b')],
  ['rotateClassCode', teachers, (v) => classes.rotateClassCode(v, made.classId)],
  ['setIdleSignOut', teachers, (v) => classes.setIdleSignOut(v, made.classId, 20)],
  ['setRetentionDate', ownerOnly, (v) => classes.setRetentionDate(v, made.classId, '2099-10-29')],
  [
    'inviteTeacher',
    ownerOnly,
    (v) => invitations.inviteTeacher(v, { classId: made.classId, role: 'teacher' }),
  ],
  ['listRoster', readers, (v) => roster.listRoster(v, made.classId)],
  ['addStudents', teachers, (v) => roster.addStudents(v, made.classId, ['Eve'])],
  ['renameStudent', teachers, (v) => roster.renameStudent(v, made.ben.studentId, 'Benno')],
  ['setLeft', teachers, (v) => roster.setLeft(v, made.ben.studentId, false)],
  ['setExtraAttempts', teachers, (v) => roster.setExtraAttempts(v, made.ben.studentId, 1)],
  ['setExtraTime', teachers, (v) => roster.setExtraTime(v, made.ben.studentId, '1.5')],
  ['issueCards', teachers, (v) => roster.issueCards(v, made.classId, [made.ben.studentId])],
  ['exportStudent', teachers, (v) => roster.exportStudent(v, made.ann.studentId)],
  [
    'createAssignment',
    teachers,
    (v) => assignments.createAssignment(v, made.classId, assignmentInput(), monday),
  ],
  ['listAssignments', readers, (v) => assignments.listAssignments(v, made.classId)],
  ['getAssignment', readers, (v) => assignments.getAssignment(v, made.assignmentId)],
  [
    'previewAnswerKey',
    [...teachers, 'observer'],
    (v) => assignments.previewAnswerKey(v, made.draftId),
  ],
  [
    'updateAssignment',
    teachers,
    (v) => assignments.updateAssignment(v, made.draftId, assignmentInput()),
  ],
  ['releaseFeedback', teachers, (v) => assignments.releaseFeedback(v, made.assignmentId)],
  ['getGradebook', readers, (v) => gradebook.getGradebook(v, made.classId)],
  [
    'getStudentGradebook',
    readers,
    (v) => gradebook.getStudentGradebook(v, { studentId: made.ann.studentId }),
  ],
  ['exportGradebookCsv', teachers, (v) => gradebook.exportGradebookCsv(v, made.classId)],
  ['getStudentRecord', readers, (v) => gradebook.getStudentRecord(v, made.ann.studentId)],
  [
    'overrideMark',
    teachers,
    (v) =>
      gradebook.overrideMark(v, {
        studentId: made.ben.studentId,
        assignmentId: made.assignmentId,
        mark: 50,
        note: noteOf(v),
      }),
  ],
  [
    'excuse',
    teachers,
    (v) =>
      gradebook.excuse(v, {
        studentId: made.ben.studentId,
        assignmentId: made.assignmentId,
        note: noteOf(v),
      }),
  ],
  [
    'extendDue',
    teachers,
    (v) =>
      gradebook.extendDue(v, {
        studentId: made.ben.studentId,
        assignmentId: made.assignmentId,
        dueAt: '2026-12-07T18:00:00Z',
        note: noteOf(v),
      }),
  ],
  ['getSkillMatrix', readers, (v) => progress.getSkillMatrix(v, made.classId, monday)],
  [
    'getSkillRecord',
    readers,
    (v) => progress.getSkillRecord(v, made.ann.studentId, 'choose-stars', monday),
  ],
  ['getMySkills', ['ann', 'ben', 'dee'], (v) => progress.getMySkills(v, monday)],
  [
    'nextQuestion',
    ['ann', 'ben', 'dee'],
    (v) => questions.nextQuestion(v, { lesson: 'choosing-alignment-stars' }, monday),
  ],
  ['getAttemptResult', [...readers, 'ann'], (v) => attempts.getAttemptResult(v, made.submittedId)],
  ['getAttemptResult of an open attempt', [], (v) => attempts.getAttemptResult(v, made.openId)],
  ['getOpenAttempt', ['ann'], (v) => attempts.getOpenAttempt(v, made.openId)],
  [
    'getOpenAttempt of a submitted attempt',
    [],
    (v) => attempts.getOpenAttempt(v, made.submittedId),
  ],
  [
    'saveDraft',
    ['ann'],
    (v) =>
      attempts.saveDraft(
        v,
        made.openId,
        { sequence: 1, draft: { picks: [], saysNone: true, proposalIndex: 0 } },
        monday,
      ),
  ],
  ['startAttempt', ['ann', 'ben'], (v) => startPart(v, made.assignmentId, monday)],
  ['startAttempt of a draft', [], (v) => startPart(v, made.draftId, monday)],
  [
    'startPractice',
    ['ann', 'ben'],
    (v) => attempts.startPractice(v, { assignmentId: made.assignmentId }, monday),
  ],
  [
    'submitAttempt',
    ['ann'],
    (v) =>
      attempts.submitAttempt(
        v,
        made.openId,
        { submission: { kind: 'none-usable' }, idempotencyKey: 'second-key' },
        monday,
      ),
  ],
  // An answer that cannot be read leaves the question open, so that everybody may try.
  [
    'answerQuestion',
    ['ann'],
    async (v) => {
      const answer = await questions.answerQuestion(v, made.questionId, {}, monday);
      return !answer.ok && answer.problem.code === 'bad-input' ? true : answer;
    },
  ],
  ['getGroups', readers, (v) => groups.getGroups(v, made.classId)],
  [
    'saveGroups',
    teachers,
    async (v) => {
      const version = (await groups.getGroups(v, made.classId))?.version ?? '';
      return groups.saveGroups(v, made.classId, { version, groups: [] }, monday);
    },
  ],
  ['listMembers', teachers, (v) => members.listMembers(v, made.classId)],
  [
    'changeRole',
    ownerOnly,
    (v) => {
      const { teacherId } = made.observer;
      return members.changeRole(v, made.classId, { teacherId, from: 'observer', to: 'observer' });
    },
  ],
  ['listToLetIn', [...teachers, 'cover'], (v) => unlock.listToLetIn(v, made.classId)],
  ['letStudentIn', [...teachers, 'cover'], (v) => unlock.letStudentIn(v, made.ben.studentId)],
  ['createCoverLink', teachers, (v) => cover.createCoverLink(v, made.classId, monday)],
  ['listCoverLinks', teachers, (v) => cover.listCoverLinks(v, made.classId, monday)],
  ['endCoverLink', teachers, (v) => cover.endCoverLink(v, made.cover.coverId, monday)],
  ['publishAssignment', teachers, (v) => assignments.publishAssignment(v, made.draftId, monday)],
  ['deleteAssignment', teachers, (v) => assignments.deleteAssignment(v, deletable(v))],
  ['removeStudent', teachers, (v) => roster.removeStudent(v, removable(v))],
  ['removeMember', ownerOnly, (v) => members.removeMember(v, made.classId, made.goingId)],
  ['archiveClass', ownerOnly, (v) => archive.archiveClass(v, made.classId)],
  ['takeBackClass', ownerOnly, (v) => archive.takeBackClass(v, made.classId)],
  ['deleteClass', ownerOnly, (v) => classes.deleteClass(v, made.classId)],
];

describe('only those may who should', () => {
  test.each(cases)('%s', async (_, may, call) => {
    // Those who may come last: some of the calls cannot be repeated.
    for (const who of everybody.filter((name) => !may.includes(name))) {
      expect(seesNothing(await call(made[who])), who).toBe(true);
    }
    for (const who of everybody.filter((name) => may.includes(name))) {
      const answer = await call(made[who]);
      expect(seesNothing(answer), who).toBe(false);
      if (typeof answer === 'object' && answer !== null && 'ok' in answer)
        expect(answer.ok, who).toBe(true);
    }
  });
});

test('the table above leaves out no function', () => {
  const named = new Set(cases.map(([name]) => name));
  // Each with a test of its own: the lists show what is one's own, a look needs a lab that has looks, a
  // class is handed over in members.test.ts; the others take no viewer.
  const elsewhere = new Set([
    'lookAt',
    'handOverClass',
    'checkCoverToken',
    'listClasses',
    'createClass',
    'listStudentAssignments',
    'defaultRetentionDate',
    'readInvitation',
    'hasTeachers',
    'issueFirstTeacherToken',
    'createTeacherFromInvitation',
  ]);
  const modules = [classes, roster, assignments, attempts, gradebook, invitations];
  const others = [questions, progress, archive, cover, groups, members, unlock];
  const functions = [...modules, ...others].flatMap((module) =>
    Object.entries(module)
      .filter(([, value]) => typeof value === 'function')
      .map(([name]) => name),
  );
  expect(functions.length).toBeGreaterThan(30);
  expect(functions.filter((name) => !named.has(name) && !elsewhere.has(name))).toEqual([]);
});

test('a wrong input tells an outsider no more than a right one', async () => {
  const school = await makeSchool();
  const assignmentId = await published(school);
  const wrong = { studentId: school.ann.studentId, assignmentId, mark: 999, note };
  for (const viewer of [school.stranger, school.observer, school.ann, school.anonymous]) {
    expect(seesNothing(await gradebook.overrideMark(viewer, wrong))).toBe(true);
    expect(seesNothing(await assignments.createAssignment(viewer, school.classId, {}))).toBe(true);
  }
  expect(await gradebook.overrideMark(school.owner, wrong)).toMatchObject({
    problem: { field: 'mark' },
  });
});

test('what students have worked on only the owner deletes', async () => {
  const school = await makeSchool();
  const assignmentId = await published(school);
  await started(school.ann, assignmentId);
  expect(await assignments.deleteAssignment(school.colleague, assignmentId)).toMatchObject({
    problem: { code: 'owner-only' },
  });
  expect(await assignments.getAssignment(school.owner, assignmentId)).not.toBeNull();
  expect(await assignments.deleteAssignment(school.owner, assignmentId)).toMatchObject({
    ok: true,
  });
});

test('lists show to each what is theirs', async () => {
  const school = await makeSchool();
  expect(await classes.listClasses(school.anonymous)).toEqual([]);
  expect(await classes.listClasses(school.ann)).toEqual([]);
  expect((await classes.listClasses(school.stranger)).map(({ id }) => id)).toEqual([
    school.otherClassId,
  ]);
  expect((await classes.listClasses(school.observer)).map(({ role }) => role)).toEqual([
    'observer',
  ]);
  const assignmentId = await published(school);
  const listOf = async (viewer: Viewer) =>
    (await attempts.listStudentAssignments(viewer, monday)).map((item) => item.assignmentId);
  expect(await listOf(school.ben)).toEqual([assignmentId]);
  expect(await listOf(school.dee)).toEqual([]);
  expect(await listOf(school.owner)).toEqual([]);
  expect(await listOf(school.anonymous)).toEqual([]);
});

test('only a teacher makes a class', async () => {
  const input = { name: 'Mine', timeZone: 'Europe/London' };
  for (const viewer of [made.anonymous, made.ann]) {
    expect(seesNothing(await classes.createClass(viewer, input, monday))).toBe(true);
  }
  expect(await classes.createClass(made.stranger, input, monday)).toMatchObject({ ok: true });
  expect(
    await classes.createClass(made.stranger, { name: ' ', timeZone: 'Europe/London' }),
  ).toMatchObject({
    problem: { field: 'name' },
  });
  expect(
    await classes.createClass(made.stranger, { name: 'Mine', timeZone: 'Mars/Dome' }),
  ).toMatchObject({
    problem: { field: 'timeZone' },
  });
});
