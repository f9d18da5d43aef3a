import { beforeAll, describe, expect, test } from 'vitest';
import { submitAttempt } from '@/lib/data/attempts';
import { releaseFeedback } from '@/lib/data/assignments';
import type { AssignmentPolicy } from '@/lib/data/assignment-input';
import { db } from '@/lib/data/db';
import { answerQuestion, nextQuestion } from '@/lib/data/questions';
import { getMySkills, getSkillMatrix, getSkillRecord } from '@/lib/data/skill-progress';
import { storedItemSchema } from '@/lib/data/stored-item';
import { skills, type Skill } from '@/lib/course/skills';
import { rightAnswer } from '@/lib/items/answers-to-try';
import type { Lab } from '@/lib/variants/labs';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  answerFor,
  at,
  makeSchool,
  monday,
  published,
  started,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
const tuesday = at('2026-12-01T09:00:00Z');

const mine = async (school: School, skill: Skill, clock = tuesday) =>
  (await getMySkills(school.ann, clock))?.standings.find((one) => one.skill === skill);
const theirs = async (school: School, skill: Skill, clock = tuesday) =>
  (await getSkillMatrix(school.owner, school.classId, clock))?.students
    .find(({ id }) => id === school.ann.studentId)
    ?.standings.find((one) => one.skill === skill);
const evidence = async (school: School, skill: Skill) =>
  (await getSkillRecord(school.owner, school.ann.studentId, skill, tuesday))?.pieces ?? [];

async function handedIn(
  school: School,
  policy: Partial<AssignmentPolicy>,
  clock = monday,
): Promise<string> {
  const assignmentId = await published(school, policy);
  const attemptId = await started(school.ann, assignmentId);
  const submission = await answerFor(attemptId, 'best');
  const sent = { submission, idempotencyKey: `key-${attemptId}` };
  valueOf(await submitAttempt(school.ann, attemptId, sent, clock));
  return attemptId;
}

/** An attempt at another lab, as if its grader had said so: copied from one that was handed in. */
async function asIf(
  attemptId: string,
  lab: Lab | 'lesson-questions',
  mark: { total: number; gateFailed?: boolean; result?: object },
): Promise<void> {
  await db().attempt.update({ where: { id: attemptId }, data: { lab } });
  await db().mark.updateMany({ where: { attemptId }, data: mark });
}

describe('a check', () => {
  let school: School;
  beforeAll(async () => {
    school = await makeSchool();
  });

  test('tells of its skill at once where the policy shows marks at once', async () => {
    const attemptId = await handedIn(school, {});
    expect(await mine(school, 'choose-stars')).toMatchObject({ state: 'practising', inARow: 1 });
    expect(await evidence(school, 'choose-stars')).toMatchObject([
      {
        mode: 'check',
        passMark: 70,
        passed: true,
        withheld: false,
        question: null,
        source: { kind: 'lab', attemptId, lab: 'pick-the-pair', from: 'mark' },
        made: { inARow: 1 },
      },
    ]);
  });

  test('counts with its mark as it is now, whatever it was, and before any lateness', async () => {
    const attemptId = await handedIn(school, {}, afterDue(-1));
    const clock = afterDue(1);
    const inARow = async () => (await theirs(school, 'choose-stars', clock))?.inARow;
    await db().mark.updateMany({ where: { attemptId }, data: { total: 69.9 } });
    expect(await inARow()).toBe(0);
    const [first] = await db().mark.findMany({ where: { attemptId } });
    if (first === undefined) throw new Error('it was marked');
    await db().mark.create({
      data: { ...first, result: {}, graderVersion: first.graderVersion + 1, total: 70 },
    });
    expect(await inARow()).toBe(1);
  });
});

test('what a policy still withholds the teacher sees and the student does not', async () => {
  const school = await makeSchool();
  const attemptId = await handedIn(school, { feedback: 'when-released' });
  expect(await theirs(school, 'choose-stars')).toMatchObject({ state: 'practising', pieces: 1 });
  expect(await mine(school, 'choose-stars')).toMatchObject({ state: 'not-started', pieces: 0 });
  expect(await evidence(school, 'choose-stars')).toMatchObject([{ withheld: true }]);
  const { assignmentId } = await db().attempt.findUniqueOrThrow({ where: { id: attemptId } });
  valueOf(await releaseFeedback(school.owner, assignmentId ?? '', monday));
  expect(await mine(school, 'choose-stars')).toMatchObject({ state: 'practising', pieces: 1 });

  await handedIn(school, { feedback: 'after-due' });
  expect(await mine(school, 'choose-stars')).toMatchObject({ pieces: 1 });
  expect(await mine(school, 'choose-stars', afterDue(1))).toMatchObject({ pieces: 2 });
});

test('a gate that failed tells against the skill and against safety', async () => {
  const school = await makeSchool();
  await asIf(await handedIn(school, {}), 'power', { total: 100, gateFailed: true });
  expect(await evidence(school, 'power')).toMatchObject([{ passed: false, gateFailed: true }]);
  expect(await evidence(school, 'safety')).toMatchObject([
    { passed: false, source: { kind: 'lab', lab: 'power', from: 'gates' } },
  ]);
});

test('a rehearsal tells of what it showed, by the result of its latest grader', async () => {
  const school = await makeSchool();
  const attemptId = await handedIn(school, {});
  const result = { skills: [{ skill: 'align', shown: true }] };
  await asIf(attemptId, 'dress-rehearsal', { total: 60, result });
  expect(await evidence(school, 'align')).toMatchObject([{ passed: true, mark: 100 }]);
  expect(await evidence(school, 'choose-stars')).toEqual([]);
});

test('a set of questions tells of each that was answered', async () => {
  const school = await makeSchool();
  const item = { family: 'any', template: 'one', skill: 'finder', mark: 100, answer: {} };
  const items = [item, { ...item, template: 'two', mark: 40 }];
  const unanswered = { ...item, template: 'three', mark: 0, answer: null };
  const result = { items: [...items, unanswered] };
  await asIf(await handedIn(school, {}), 'lesson-questions', { total: 47, result });
  expect(await evidence(school, 'finder')).toMatchObject([
    { template: 'any/one', passed: true, source: { kind: 'item', title: 'Pick the pair' } },
    { template: 'any/two', passed: false },
  ]);
});

test('a question that was answered stands in the evidence with its answer and what was said', async () => {
  const school = await makeSchool();
  const { id, skill, face } = valueOf(
    await nextQuestion(school.ann, { lesson: 'choosing-alignment-stars' }, monday),
  );
  const row = await db().askedQuestion.findUniqueOrThrow({ where: { id } });
  const answer = rightAnswer(storedItemSchema.parse(row.item));
  expect(await evidence(school, skill)).toEqual([]);
  valueOf(await answerQuestion(school.ann, id, answer, monday));
  const [piece] = await evidence(school, skill);
  expect(piece).toMatchObject({
    mode: 'practice',
    passed: true,
    passMark: 80,
    question: { face, answer, feedback: { verdict: 'right' } },
  });
  expect(piece?.about).toMatch(/./);
});

test('every student of the class has the twelve skills, in the order of an evening', async () => {
  const school = await makeSchool();
  const matrix = await getSkillMatrix(school.observer, school.classId, tuesday);
  expect(matrix?.students.map(({ displayName }) => displayName)).toEqual(['Ann', 'Ben', 'Cy']);
  for (const { standings } of matrix?.students ?? []) {
    expect(standings.map(({ skill }) => skill)).toEqual(skills);
    expect(new Set(standings.map(({ state }) => state))).toEqual(new Set(['not-started']));
  }
});

test('what is still to come by the clock is no evidence yet', async () => {
  const school = await makeSchool();
  await handedIn(school, {}, at('2026-12-01T12:00:00Z'));
  expect(await theirs(school, 'choose-stars', tuesday)).toMatchObject({ pieces: 0 });
});
