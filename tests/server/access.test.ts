import { beforeAll, describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import * as assignments from '@/lib/data/assignments';
import * as attempts from '@/lib/data/attempts';
import * as classes from '@/lib/data/classes';
import * as gradebook from '@/lib/data/gradebook';
import * as invitations from '@/lib/data/invitations';
import * as questions from '@/lib/data/questions';
import * as roster from '@/lib/data/roster';
import * as progress from '@/lib/data/skill-progress';
import { useSchoolDatabase } from '../support/school-database';
import {
  answerFor,
  assignmentInput,
  makeSchool,
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
  made = {
    ...{ ...school, draftId: draft.assignmentId, assignmentId, openId, submittedId },
    questionId: question.id,
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

type Who = 'owner' | 'colleague' | 'observer' | 'stranger' | 'ann' | 'ben' | 'dee' | 'anonymous';
const everybody: Who[] = [
  'owner',
  'colleague',
  'observer',
  'stranger',
  'ann',
  'ben',
  'dee',
  'anonymous',
];
const ownerOnly: Who[] = ['owner'];
const teachers: Who[] = ['owner', 'colleague'];
const members: Who[] = ['owner', 'colleague', 'observer'];

type Case = [name: string, may: Who[], call: (viewer: Viewer) => Promise<unknown>];
const note = 'because';

/** Where two may destroy, each has one of its own. */
const deletable = (viewer: Viewer) =>
  viewer === made.colleague ? made.draftId : made.assignmentId;
const removable = (viewer: Viewer) => (viewer === made.colleague ? made.cy : made.ben).studentId;

/** The ones that destroy come last, deleting the class at the very end. */
const cases: Case[] = [
  ['getClass', members, (v) => classes.getClass(v, made.classId)],
  ['renameClass', teachers, (v) => classes.renameClass(v, made.classId, 'Year 8b')],
  ['rotateClassCode', teachers, (v) => classes.rotateClassCode(v, made.classId)],
  ['setIdleSignOut', teachers, (v) => classes.setIdleSignOut(v, made.classId, 20)],
  ['setRetentionDate', ownerOnly, (v) => classes.setRetentionDate(v, made.classId, '2099-10-29')],
  [
    'inviteTeacher',
    ownerOnly,
    (v) => invitations.inviteTeacher(v, { classId: made.classId, role: 'teacher' }),
  ],
  ['listRoster', members, (v) => roster.listRoster(v, made.classId)],
  ['addStudents', teachers, (v) => roster.addStudents(v, made.classId, ['Eve'])],
  ['renameStudent', teachers, (v) => roster.renameStudent(v, made.ben.studentId, 'Benno')],
  ['setExtraAttempts', teachers, (v) => roster.setExtraAttempts(v, made.ben.studentId, 1)],
  ['setExtraTime', teachers, (v) => roster.setExtraTime(v, made.ben.studentId, '1.5')],
  ['issueCards', teachers, (v) => roster.issueCards(v, made.classId, [made.ben.studentId])],
  ['exportStudent', teachers, (v) => roster.exportStudent(v, made.ann.studentId)],
  [
    'createAssignment',
    teachers,
    (v) => assignments.createAssignment(v, made.classId, assignmentInput(), monday),
  ],
  ['listAssignments', members, (v) => assignments.listAssignments(v, made.classId)],
  ['getAssignment', members, (v) => assignments.getAssignment(v, made.assignmentId)],
  ['previewAnswerKey', members, (v) => assignments.previewAnswerKey(v, made.draftId)],
  [
    'updateAssignment',
    teachers,
    (v) => assignments.updateAssignment(v, made.draftId, assignmentInput()),
  ],
  ['releaseFeedback', teachers, (v) => assignments.releaseFeedback(v, made.assignmentId)],
  ['getGradebook', members, (v) => gradebook.getGradebook(v, made.classId)],
  ['exportGradebookCsv', teachers, (v) => gradebook.exportGradebookCsv(v, made.classId)],
  ['getStudentRecord', members, (v) => gradebook.getStudentRecord(v, made.ann.studentId)],
  [
    'overrideMark',
    teachers,
    (v) =>
      gradebook.overrideMark(v, {
        studentId: made.ben.studentId,
        assignmentId: made.assignmentId,
        mark: 50,
        note,
      }),
  ],
  [
    'excuse',
    teachers,
    (v) =>
      gradebook.excuse(v, { studentId: made.ben.studentId, assignmentId: made.assignmentId, note }),
  ],
  [
    'extendDue',
    teachers,
    (v) =>
      gradebook.extendDue(v, {
        studentId: made.ben.studentId,
        assignmentId: made.assignmentId,
        dueAt: '2026-12-07T18:00:00Z',
        note,
      }),
  ],
  ['getSkillMatrix', members, (v) => progress.getSkillMatrix(v, made.classId, monday)],
  [
    'getSkillRecord',
    members,
    (v) => progress.getSkillRecord(v, made.ann.studentId, 'choose-stars', monday),
  ],
  ['getMySkills', ['ann', 'ben', 'dee'], (v) => progress.getMySkills(v, monday)],
  [
    'nextQuestion',
    ['ann', 'ben', 'dee'],
    (v) => questions.nextQuestion(v, { lesson: 'choosing-alignment-stars' }, monday),
  ],
  ['getAttemptResult', [...members, 'ann'], (v) => attempts.getAttemptResult(v, made.submittedId)],
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
  ['publishAssignment', teachers, (v) => assignments.publishAssignment(v, made.draftId, monday)],
  ['deleteAssignment', teachers, (v) => assignments.deleteAssignment(v, deletable(v))],
  ['removeStudent', teachers, (v) => roster.removeStudent(v, removable(v))],
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
  // Each with a test of its own: the lists show what is one's own, a look needs a lab that has looks;
  // the others take no viewer.
  const elsewhere = new Set([
    'lookAt',
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
  const functions = [...modules, questions, progress].flatMap((module) =>
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
