import 'server-only';
import type { LessonSlug } from '../course/lessons';
import type { Skill } from '../course/skills';
import { chooseTemplate } from '../items/choose-template';
import { drawItem } from '../items/draw-item';
import { gradeItem, itemGraderVersion } from '../items/grade-item';
import type { ItemAnswer } from '../items/item-answer';
import { familiesOf } from '../items/item-bank';
import type { Item } from '../items/item';
import type { ItemFamily } from '../items/item-family';
import type { ItemRefusal } from '../items/judgement';
import { passes, practicePassMark } from '../mastery/evidence';
import { randomFrom } from '../variants/random';
import { loadItemWorld } from '../content/item-world';
import type { Clock } from './clock';
import { db, type Transaction } from './db';
import { hmacOf } from './env';
import { isUniqueViolation } from './is-unique-violation';

/*
 * Asking and marking without asking who is there: for lib/data/questions.ts, which does, and for the
 * demonstration.
 */

const openSelect = { id: true, skill: true, item: true } as const;

/** What is to be asked about: a lesson, or one skill of those that the lesson has questions on. */
export type AskedAbout = { lesson: LessonSlug; skill?: Skill | null };

/**
 * The student's open question of the lesson, else a new one; null where the bank has nothing on it. With
 * a skill, open questions on others stay open for later. A skill that the lesson does not ask about counts
 * as none.
 */
export async function openOrAsk(
  studentId: string,
  { lesson, skill = null }: AskedAbout,
  clock: Clock,
) {
  const all = familiesOf(lesson);
  const onSkill = all.filter((family) => family.skill === skill);
  const families = onSkill.length > 0 ? onSkill : all;
  const only = skill !== null && onSkill.length > 0 ? { skill } : {};
  // Twice at most: where two ask at once, the second finds what the first was given.
  for (let round = 0; round < 2; round += 1) {
    try {
      return await db().$transaction(async (transaction) => {
        const open = await transaction.askedQuestion.findFirst({
          where: { studentId, lesson, answeredAt: null, ...only },
          orderBy: { number: 'asc' },
          select: openSelect,
        });
        return open ?? (await ask(transaction, { studentId, lesson, families }, clock));
      });
    } catch (error) {
      if (!isUniqueViolation(error) || round > 0) throw error;
    }
  }
  return null;
}

const passed = (mark: number): boolean =>
  passes({ mark, passMark: practicePassMark, gateFailed: false });

async function ask(
  transaction: Transaction,
  {
    studentId,
    lesson,
    families,
  }: { studentId: string; lesson: LessonSlug; families: readonly ItemFamily[] },
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
    families,
    asked: before.map(({ family, template, mark }) => ({
      family,
      template,
      passed: mark === null ? null : passed(mark),
    })),
    random: randomFrom(`${seed}/which`),
  });
  if (chosen === null) return null;
  const { family, template } = chosen;
  const item = drawItem(family, template, { seed, world: loadItemWorld() });
  return transaction.askedQuestion.create({
    data: {
      studentId,
      lesson,
      number,
      skill: family.skill,
      family: family.id,
      template,
      seed,
      generatorVersion: item.generatorVersion,
      graderVersion: itemGraderVersion,
      item,
      askedAt: clock.now(),
    },
    select: openSelect,
  });
}

/**
 * Marks an answer and keeps it, unless there is one already: the first counts. The refusal of what
 * cannot be marked, which changes nothing; else null.
 */
export async function keepAnswer(
  { questionId, item, answer }: { questionId: string; item: Item; answer: ItemAnswer },
  clock: Clock,
): Promise<ItemRefusal['code'] | null> {
  const grading = gradeItem(item, answer);
  if (!grading.ok) return grading.refusal.code;
  // Of two that arrive together, one finds the question answered and changes nothing.
  await db().askedQuestion.updateMany({
    where: { id: questionId, answeredAt: null },
    data: {
      answer,
      mark: 100 * grading.feedback.mark,
      graderVersion: itemGraderVersion,
      answeredAt: clock.now(),
    },
  });
  return null;
}
