import { beforeAll, describe, expect, test } from 'vitest';
import { submitAttempt } from '@/lib/data/attempts';
import { getClassStatistics } from '@/lib/data/class-statistics';
import { db } from '@/lib/data/db';
import { excuse } from '@/lib/data/gradebook';
import { loadItemWorld } from '@/lib/content/item-world';
import type { LessonSlug } from '@/lib/course/lessons';
import { answerQuestion, nextQuestion } from '@/lib/data/questions';
import { setLeft } from '@/lib/data/roster';
import type { Viewer } from '@/lib/auth/policy';
import { wrongAnswers } from '@/lib/items/answers-to-try';
import { drawItem } from '@/lib/items/draw-item';
import { gradeItem } from '@/lib/items/grade-item';
import { familiesOf } from '@/lib/items/item-bank';
import { misconceptions } from '@/lib/items/misconceptions';
import { questionsOf, questionsTask, rightAnswersOf } from '../support/lab-work';
import { useSchoolDatabase } from '../support/school-database';
import {
  answerFor,
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

type Student = Extract<Viewer, { kind: 'student' }>;

const statisticsOf = async (viewer: Viewer = school.owner) => {
  const found = await getClassStatistics(viewer, school.classId, monday);
  if (found === null) throw new Error('the class is not to be seen');
  return found;
};
const assignmentIn = async (assignmentId: string) => {
  const found = (await statisticsOf()).assignments.find(({ id }) => id === assignmentId);
  if (found === undefined) throw new Error('the assignment is missing');
  return found;
};

async function handedIn(
  student: Student,
  assignmentId: string,
  submission: (attemptId: string) => Promise<object>,
): Promise<string> {
  const attemptId = await started(student, assignmentId);
  const sent = { submission: await submission(attemptId), idempotencyKey: `key-${attemptId}` };
  valueOf(await submitAttempt(student, attemptId, sent, monday));
  return attemptId;
}
const best = (attemptId: string) => answerFor(attemptId, 'best');

/** Puts a known result in the place of the grader's. */
async function setResult(attemptId: string, total: number, result: object): Promise<void> {
  await db().mark.updateMany({
    where: { attemptId },
    data: { total, result: { total, ...result } },
  });
}
const criteria = (first: number, second: number) => [
  { id: 'first-star', earned: first, possible: 40 },
  { id: 'second-star', earned: second, possible: 60 },
];

/** A question with one right choice, and a wrong one behind which a known idea stands. */
function choiceWithAnIdea(lesson: LessonSlug) {
  for (const family of familiesOf(lesson)) {
    for (const template of Object.keys(family.templates)) {
      const item = drawItem(family, template, { seed: 'a wrong choice', world: loadItemWorld() });
      for (const answer of item.kind === 'choice' ? wrongAnswers(item) : []) {
        const grading = gradeItem(item, answer);
        const idea = grading.ok ? grading.feedback.misconceptions[0] : undefined;
        if (idea !== undefined) return { item, answer, idea };
      }
    }
  }
  throw new Error(`${lesson} has no choice that a known idea stands behind`);
}

describe('who may see what a class’s work says', () => {
  test('are its teachers, observers too, and whoever covers it', async () => {
    const { classId } = school;
    const cover = (of: string) =>
      ({ kind: 'cover', coverId: 'a cover', classId: of, displayName: 'Cover teacher' }) as const;
    for (const viewer of [school.owner, school.colleague, school.observer, cover(classId)])
      expect(await getClassStatistics(viewer, classId, monday)).not.toBeNull();
    for (const viewer of [
      ...[school.stranger, school.ann, school.dee, school.anonymous],
      cover(school.otherClassId),
    ])
      expect(await getClassStatistics(viewer, classId, monday)).toBeNull();
    expect(await getClassStatistics(school.owner, 'no such class', monday)).toBeNull();
  });

  test('find nothing of another class in it', async () => {
    const there = await getClassStatistics(school.stranger, school.otherClassId, monday);
    expect(there).toMatchObject({ assignments: [], questions: [], ideas: [], isDemo: false });
    expect(there?.students.map(({ displayName }) => displayName)).toEqual(['Dee']);
  });
});

describe('an assignment', () => {
  test('has the marks that count, and apart who is excused and who has none', async () => {
    const assignmentId = await published(school);
    const low = await handedIn(school.ann, assignmentId, best);
    const high = await handedIn(school.ann, assignmentId, best);
    await setResult(low, 40, { criteria: criteria(20, 20) });
    await setResult(high, 90, { criteria: criteria(30, 60) });
    const decision = { studentId: school.ben.studentId, assignmentId, note: 'Away.' };
    valueOf(await excuse(school.owner, decision, monday));
    expect(await assignmentIn(assignmentId)).toMatchObject({
      marks: [90],
      reached: 1,
      gateFailed: 0,
      excused: 1,
      withoutMark: 1,
      passMark: 70,
    });
  });

  test('has the criteria of first attempts alone', async () => {
    const assignmentId = await published(school);
    for (const [student, first, second] of [
      [school.ann, criteria(20, 60), criteria(40, 60)],
      [school.ben, criteria(40, 0), criteria(40, 60)],
    ] as const) {
      await setResult(await handedIn(student, assignmentId, best), 80, { criteria: first });
      await setResult(await handedIn(student, assignmentId, best), 100, { criteria: second });
    }
    const [part] = (await assignmentIn(assignmentId)).parts;
    expect(part).toMatchObject({ people: 2, lab: 'pick-the-pair' });
    expect(part?.criteria).toMatchObject([
      // 20 and 40 of 40; 60 and 0 of 60. The two go opposite ways.
      { id: 'first-star', people: 2, difficulty: 0.75, full: 1, nothing: 0, itemRest: -1 },
      { id: 'second-star', people: 2, difficulty: 0.5, full: 1, nothing: 1, itemRest: -1 },
    ]);
  });

  test('names who failed which gate at first, and whose failure still stands', async () => {
    const assignmentId = await published(school);
    const gates = [{ id: 'sun' }, { id: 'sun' }];
    const failed: string[] = [];
    for (const student of [school.ann, school.ben]) {
      const attemptId = await handedIn(student, assignmentId, best);
      await setResult(attemptId, 80, { criteria: criteria(40, 40), gates });
      await db().mark.updateMany({ where: { attemptId }, data: { gateFailed: true } });
      failed.push(attemptId);
    }
    const mended = await handedIn(school.ben, assignmentId, best);
    await setResult(mended, 90, { criteria: criteria(40, 50), gates: [] });
    const found = await assignmentIn(assignmentId);
    expect(found.parts[0]?.gates).toEqual([
      {
        id: 'sun',
        attempts: [school.ann, school.ben].map(({ studentId }, index) => ({
          studentId,
          attemptId: failed[index],
        })),
      },
    ]);
    expect(found.parts[0]?.gateStandsFor).toEqual([school.ann.studentId]);
    expect(found).toMatchObject({ marks: [80, 90], reached: 1, gateFailed: 1 });
  });

  test('gives away the idea behind a slip, with the lesson that answers it', async () => {
    const assignmentId = await published(school);
    const result = { criteria: criteria(40, 0), advice: { code: 'too-close', separationDeg: 9 } };
    await setResult(await handedIn(school.cy, assignmentId, best), 40, result);
    expect((await statisticsOf()).ideas).toContainEqual({
      id: 'two-stars-too-close',
      sentence: misconceptions['two-stars-too-close'],
      lesson: 'choosing-alignment-stars',
      studentIds: [school.cy.studentId],
      inQuestions: 0,
      inLabs: 1,
    });
  });
});

describe('questions', () => {
  test('of a set count each student once in every family, by the first answer', async () => {
    const assignmentId = await published(school, {}, monday, questionsTask);
    const first = await handedIn(school.ann, assignmentId, rightAnswersOf);
    await handedIn(school.ann, assignmentId, async () => Promise.resolve({ answers: [] }));
    await handedIn(school.ben, assignmentId, rightAnswersOf);
    const asked = new Set((await questionsOf(first)).map(({ family }) => family));
    const { questions } = await statisticsOf();
    for (const family of asked) {
      const found = questions.find((one) => one.family === family);
      // Ben may have been asked about it too; what was left out in the second set counts nothing.
      expect(found).toMatchObject({ difficulty: 1, wrong: 0, partly: 0, kinds: [] });
      expect([1, 2]).toContain(found?.people);
    }
    const [part] = (await assignmentIn(assignmentId)).parts;
    expect(part).toMatchObject({ people: 2, criteria: [], gates: [] });
    // Both all right: nothing to tell apart.
    expect(part?.reliability).toBeNull();
  });

  test('of practice tell what was answered instead, and the idea behind it', async () => {
    // Of a lesson that no set of questions here asks about.
    const { item, answer, idea } = choiceWithAnIdea('tube-on-and-balanced');
    const { id } = valueOf(
      await nextQuestion(school.cy, { lesson: 'tube-on-and-balanced' }, monday),
    );
    // Which question comes is the student's own luck: the one that is looked for is put in its place.
    const { family, template } = item;
    await db().askedQuestion.update({ where: { id }, data: { item, family, template } });
    valueOf(await answerQuestion(school.cy, id, answer, monday));
    const { questions, ideas } = await statisticsOf();
    const found = ideas.find((one) => one.id === idea);
    expect(found?.studentIds).toContain(school.cy.studentId);
    expect(found?.lesson).toBe('tube-on-and-balanced');
    const figures = questions.find((one) => one.family === family);
    expect(figures).toMatchObject({ people: 1, wrong: 1, note: null });
    expect(figures?.kinds.map((kind) => kind.template)).toEqual([template]);
    const chosen = figures?.kinds.flatMap(({ choices }) => choices) ?? [];
    expect(chosen.filter(({ people }) => people > 0)).toMatchObject([{ right: false, people: 1 }]);
  });
});

test('who has left is in no figure', async () => {
  const before = await statisticsOf();
  const assignmentId = await published(school);
  await handedIn(school.ann, assignmentId, best);
  expect((await assignmentIn(assignmentId)).marks).toHaveLength(1);
  valueOf(await setLeft(school.owner, school.ann.studentId, true, monday));
  const after = await statisticsOf();
  expect(after.students).toHaveLength(before.students.length - 1);
  expect(JSON.stringify(after)).not.toContain(school.ann.studentId);
  expect((await assignmentIn(assignmentId)).marks).toEqual([]);
});
