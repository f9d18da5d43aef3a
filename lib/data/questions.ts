import 'server-only';
import { z } from 'zod';
import type { Viewer } from '../auth/policy';
import { loadItemWorld } from '../content/item-world';
import type { LessonSlug } from '../course/lessons';
import { skills, type Skill } from '../course/skills';
import { chooseTemplate } from '../items/choose-template';
import { drawItem } from '../items/draw-item';
import { gradeItem, itemGraderVersion, type ItemFeedback } from '../items/grade-item';
import { itemAnswerSchema, type ItemAnswer } from '../items/item-answer';
import { familiesOf } from '../items/item-bank';
import { faceOfItem, type ItemFace } from '../items/item-face';
import type { ItemRefusal } from '../items/judgement';
import { passes, practicePassMark } from '../mastery/evidence';
import { masteryOf, type Mastery } from '../mastery/mastery';
import { randomFrom } from '../variants/random';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { hmacOf } from './env';
import { isUniqueViolation } from './is-unique-violation';
import { feedbackOf } from './question-feedback';
import { failure, notFound, success, type Problem, type Result } from './result';
import { shownEvidence } from './skill-evidence';
import { storedItemSchema } from './stored-item';

/** A question that waits for its answer: its face, never its key. */
export type OpenQuestion = {
  id: string;
  lesson: LessonSlug;
  skill: Skill;
  face: ItemFace;
  /** Where the student stands in the question's skill. */
  standing: Mastery;
};

/** A question with the answer that counts and what came of it; a page without script shows it whole again. */
export type AnsweredQuestion = Pick<OpenQuestion, 'skill' | 'face' | 'standing'> & {
  answer: ItemAnswer;
  feedback: ItemFeedback;
};

const skillSchema = z.enum(skills);

/**
 * The student's open question of that lesson, else a new one, drawn so that its kind is not one of the
 * last ones and that objectives not yet met come first. Students only.
 */
export async function nextQuestion(
  viewer: Viewer,
  lesson: LessonSlug,
  clock: Clock = systemClock,
): Promise<Result<OpenQuestion>> {
  if (viewer.kind !== 'student') return notFound();
  const { studentId } = viewer;
  const asked = await openOrAsk(studentId, lesson, clock);
  if (asked === null) {
    return failure('no-questions', 'There are no questions on this lesson yet.');
  }
  const skill = skillSchema.parse(asked.skill);
  return success({
    ...{ id: asked.id, lesson, skill },
    face: faceOfItem(storedItemSchema.parse(asked.item)),
    standing: await standingIn(studentId, skill, clock),
  });
}

const openSelect = { id: true, skill: true, item: true } as const;

const passed = (mark: number): boolean =>
  passes({ mark, passMark: practicePassMark, gateFailed: false });

/** Null where the bank has nothing on the lesson. */
async function openOrAsk(studentId: string, lesson: LessonSlug, clock: Clock) {
  // Twice at most: where two ask at once, the second finds what the first was given.
  for (let round = 0; round < 2; round += 1) {
    try {
      return await db().$transaction(async (transaction) => {
        const open = await transaction.askedQuestion.findFirst({
          where: { studentId, lesson, answeredAt: null },
          orderBy: { number: 'asc' },
          select: openSelect,
        });
        return open ?? (await ask(transaction, { studentId, lesson }, clock));
      });
    } catch (error) {
      if (!isUniqueViolation(error) || round > 0) throw error;
    }
  }
  return null;
}

async function ask(
  transaction: Transaction,
  { studentId, lesson }: { studentId: string; lesson: LessonSlug },
  clock: Clock,
) {
  const before = await transaction.askedQuestion.findMany({
    where: { studentId, lesson },
    orderBy: { number: 'asc' },
    select: { number: true, family: true, template: true, mark: true },
  });
  const number = (before.at(-1)?.number ?? 0) + 1;
  const seed = hmacOf(studentId, 'question', lesson, number);
  const chosen = chooseTemplate({
    families: familiesOf(lesson),
    asked: before.map(({ family, template, mark }) => ({
      ...{ family, template, passed: mark === null ? null : passed(mark) },
    })),
    random: randomFrom(`${seed}/which`),
  });
  if (chosen === null) return null;
  const { family, template } = chosen;
  const item = drawItem(family, template, { seed, world: loadItemWorld() });
  return transaction.askedQuestion.create({
    data: {
      ...{ studentId, lesson, number, skill: family.skill, family: family.id, template, seed },
      ...{ generatorVersion: item.generatorVersion, graderVersion: itemGraderVersion, item },
      askedAt: clock.now(),
    },
    select: openSelect,
  });
}

/**
 * Marks an answer to the student's own question. The first answer counts: whatever is sent afterwards,
 * from another window or by pressing twice, gets that answer's outcome again. What cannot be marked is
 * refused in words and leaves the question open.
 */
export async function answerQuestion(
  viewer: Viewer,
  questionId: string,
  input: unknown,
  clock: Clock = systemClock,
): Promise<Result<AnsweredQuestion>> {
  if (viewer.kind !== 'student') return notFound();
  const { studentId } = viewer;
  const question = await loadOwn(studentId, questionId);
  if (question === null) return notFound();
  if (question.answeredAt === null) {
    const parsed = itemAnswerSchema.safeParse(input);
    if (!parsed.success) return failure('bad-input', `This answer cannot be read. ${stillAsked}`);
    const grading = gradeItem(storedItemSchema.parse(question.item), parsed.data);
    if (!grading.ok) return refusal(grading.refusal);
    // Of two that arrive together, one finds the question answered and changes nothing.
    await db().askedQuestion.updateMany({
      where: { id: questionId, answeredAt: null },
      data: {
        ...{ answer: parsed.data, mark: 100 * grading.feedback.mark },
        ...{ graderVersion: itemGraderVersion, answeredAt: clock.now() },
      },
    });
  }
  const answered = await loadOwn(studentId, questionId);
  if (answered === null) return notFound();
  const skill = skillSchema.parse(answered.skill);
  return success({
    skill,
    face: faceOfItem(storedItemSchema.parse(answered.item)),
    answer: itemAnswerSchema.parse(answered.answer),
    feedback: feedbackOf(answered),
    standing: await standingIn(studentId, skill, clock),
  });
}

const loadOwn = (studentId: string, id: string) =>
  db().askedQuestion.findFirst({
    where: { id, studentId },
    select: { skill: true, item: true, answer: true, answeredAt: true },
  });

async function standingIn(studentId: string, skill: Skill, clock: Clock): Promise<Mastery> {
  const now = clock.now();
  const evidence = await shownEvidence(studentId, now);
  return masteryOf(
    evidence.filter((piece) => piece.skill === skill),
    now,
  );
}

/** Said with every refusal: a slip costs nothing. */
const stillAsked = 'Nothing was counted; the question is still open.';

const refusalWords: Readonly<Record<ItemRefusal['code'], string>> = {
  'no-answer': 'There is no answer yet.',
  unfinished: 'The answer is not finished: something has no place yet.',
  'not-a-number': 'This is no number. Write it in figures, such as 12 or 3.5.',
  'other-question': 'This answer belongs to another question. Load the page again.',
};

const refusal = ({ code }: ItemRefusal): { ok: false; problem: Problem } =>
  failure(code, `${refusalWords[code]} ${stillAsked}`);
