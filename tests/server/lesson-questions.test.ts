import { beforeAll, describe, expect, test } from 'vitest';
import { previewAnswerKey } from '@/lib/data/assignments';
import {
  getAttemptResult,
  getOpenAttempt,
  saveDraft,
  startPractice,
  submitAttempt,
} from '@/lib/data/attempts';
import { db } from '@/lib/data/db';
import { exportStudent } from '@/lib/data/roster';
import { collectEvidence } from '@/lib/data/skill-evidence';
import { questionsTask, questionsOf, rightAnswersOf } from '../support/lab-work';
import { useSchoolDatabase } from '../support/school-database';
import {
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
beforeAll(async () => {
  school = await makeSchool();
});

const lessons = questionsTask.parts.flatMap(({ templates }) => templates);
const set = (change = {}) => published(school, change, monday, questionsTask);
const send = async (attemptId: string, submission: object) =>
  valueOf(
    await submitAttempt(
      school.ann,
      attemptId,
      { submission, idempotencyKey: `key-of-${attemptId}` },
      monday,
    ),
  );
const openSet = async (attemptId: string) => {
  const open = await getOpenAttempt(school.ann, attemptId);
  if (open?.lab !== 'lesson-questions') throw new Error('no open questions');
  return open;
};

describe('questions on lessons', () => {
  test('reach the page as faces, before handing in and while the result is withheld', async () => {
    const attemptId = await started(school.ann, await set({ feedback: 'when-released' }));
    const open = JSON.stringify(await openSet(attemptId));
    const items = await questionsOf(attemptId);
    for (const { explanation } of items) expect(open).not.toContain(JSON.stringify(explanation));
    expect(open).not.toMatch(/"(key|reason|rules|pairs|slips|explanation|afterwards)":/);
    await send(attemptId, await rightAnswersOf(attemptId));
    const withheld = JSON.stringify(await getAttemptResult(school.ann, attemptId, monday));
    for (const { explanation } of items)
      expect(withheld).not.toContain(JSON.stringify(explanation));
    const file = JSON.stringify(await exportStudent(school.owner, school.ann.studentId));
    expect(file).toContain('lesson-questions');
  });

  test('ask about all lessons of the assignment, on the second attempt too, and differ', async () => {
    const assignmentId = await set();
    const first = await openSet(await started(school.ann, assignmentId));
    await send(first.id, { answers: [] });
    const second = await openSet(await started(school.ann, assignmentId));
    for (const { variant } of [first, second]) {
      expect(new Set(variant.questions.map(({ lesson }) => lesson))).toEqual(new Set(lessons));
    }
    expect(second.variant.questions).not.toEqual(first.variant.questions);
  });

  test('are practised on the assigned lessons', async () => {
    const { attemptId } = valueOf(
      await startPractice(school.ann, { assignmentId: await set() }, monday),
    );
    const { variant } = await openSet(attemptId);
    expect(variant.lessons).toEqual(lessons);
  });

  test('are saved half done, resumed, and count nothing where no answer stands', async () => {
    const attemptId = await started(school.ben, await set());
    const whole = await rightAnswersOf(attemptId);
    const draft = { answers: whole.answers.slice(0, 2) };
    valueOf(await saveDraft(school.ben, attemptId, { sequence: 1, draft }, monday));
    expect(await getOpenAttempt(school.ben, attemptId)).toMatchObject({ draft, nextSequence: 2 });
    const sent = { submission: draft, idempotencyKey: 'half-of-them' };
    const { result } = valueOf(await submitAttempt(school.ben, attemptId, sent, monday));
    expect(result?.total).toBeCloseTo((100 * 2) / 8, 9);
  });

  test('are evidence one by one, each of its own skill', async () => {
    const assignmentId = await set();
    const attemptId = await started(school.cy, assignmentId);
    const submission = await rightAnswersOf(attemptId);
    const sent = { submission, idempotencyKey: 'all-of-them' };
    valueOf(await submitAttempt(school.cy, attemptId, sent, monday));
    const pieces = await collectEvidence({ studentId: school.cy.studentId }, monday.now());
    expect(pieces).toHaveLength(8);
    expect(pieces.every(({ mark }) => mark === 100)).toBe(true);
    const { answerKey } = await db().attempt.findUniqueOrThrow({
      where: { id: attemptId },
      select: { answerKey: true },
    });
    for (const { skill } of pieces) expect(JSON.stringify(answerKey)).toContain(`"${skill}"`);
  });

  test('are refused when there are more answers than questions', async () => {
    const attemptId = await started(school.ben, await set());
    const answers = Array.from({ length: 9 }, () => null);
    const sent = { submission: { answers }, idempotencyKey: 'one-too-many' };
    expect(codeOf(await submitAttempt(school.ben, attemptId, sent, monday))).toBe(
      'other-questions',
    );
    expect(await getOpenAttempt(school.ben, attemptId)).not.toBeNull();
  });

  test('are shown to the class’s teachers with every right answer, and to nobody else', async () => {
    const assignmentId = await set();
    const [preview] = (await previewAnswerKey(school.observer, assignmentId)) ?? [];
    if (preview?.lab !== 'lesson-questions') throw new Error('no preview');
    expect(preview.variants.map(({ template }) => template)).toEqual(lessons);
    for (const { sample } of preview.variants) {
      expect(sample).toHaveLength(8);
      for (const { right, explanation } of sample) {
        expect(right.length).toBeGreaterThan(0);
        expect(explanation.length).toBeGreaterThan(0);
      }
    }
    for (const who of ['stranger', 'ann', 'dee', 'anonymous'] as const) {
      expect(await previewAnswerKey(school[who], assignmentId)).toBeNull();
    }
  });
});
