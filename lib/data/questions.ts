import 'server-only';
import { z } from 'zod';
import type { Viewer } from '../auth/policy';
import type { LessonSlug } from '../course/lessons';
import { skills, type Skill } from '../course/skills';
import type { ItemFeedback } from '../items/grade-item';
import { itemAnswerSchema, type ItemAnswer } from '../items/item-answer';
import { faceOfItem, type ItemFace } from '../items/item-face';
import { masteryOf, type Mastery } from '../mastery/mastery';
import { whatItMade } from '../mastery/what-it-made';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { feedbackOf } from './question-feedback';
import { keepAnswer, openOrAsk, type AskedAbout } from './question-keeping';
import { refusalText } from './question-refusals';
import { failure, notFound, success, type Result } from './result';
import { shownEvidence, type SkillPiece } from './skill-evidence';
import { storedItemSchema } from './stored-item';

/** A question that waits for its answer: its face, never its key. */
export type OpenQuestion = {
  id: string;
  lesson: LessonSlug;
  skill: Skill;
  face: ItemFace;
  /** Where the student stands in the question's skill. */
  standing: Mastery;
  /** IANA, of the class: whose calendar the reviews go by. */
  timeZone: string;
};

/** A question with the answer that counts and what came of it; a page without script shows it whole again. */
export type AnsweredQuestion = Pick<OpenQuestion, 'skill' | 'face' | 'standing' | 'timeZone'> & {
  answer: ItemAnswer;
  feedback: ItemFeedback;
  /** What this very answer brought; null for one that only moved the row, or nothing. */
  brought: 'mastery' | 'review' | null;
};

const skillSchema = z.enum(skills);

/**
 * The student's open question of that lesson, else a new one, drawn so that its kind is not one of the
 * last ones and that objectives not yet met come first. With a skill, of that skill alone: for a review.
 * Students only.
 */
export async function nextQuestion(
  viewer: Viewer,
  about: AskedAbout,
  clock: Clock = systemClock,
): Promise<Result<OpenQuestion>> {
  if (viewer.kind !== 'student') return notFound();
  const { studentId } = viewer;
  const asked = await openOrAsk(studentId, about, clock);
  if (asked === null) {
    return failure('no-questions', 'There are no questions on this lesson yet.');
  }
  const skill = skillSchema.parse(asked.skill);
  return success({
    id: asked.id,
    lesson: about.lesson,
    skill,
    face: faceOfItem(storedItemSchema.parse(asked.item)),
    ...(await standingIn(studentId, skill, clock)).told,
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
    const item = storedItemSchema.parse(question.item);
    const refused = await keepAnswer({ questionId, item, answer: parsed.data }, clock);
    if (refused !== null) return failure(refused, `${refusalText(refused)} ${stillAsked}`);
  }
  const answered = await loadOwn(studentId, questionId);
  if (answered === null) return notFound();
  const skill = skillSchema.parse(answered.skill);
  const { told, pieces } = await standingIn(studentId, skill, clock);
  return success({
    skill,
    ...told,
    brought: broughtBy(questionId, pieces),
    face: faceOfItem(storedItemSchema.parse(answered.item)),
    answer: itemAnswerSchema.parse(answered.answer),
    feedback: feedbackOf(answered),
  });
}

/** Said with every refusal: a slip costs nothing. */
const stillAsked = 'Nothing was counted; the question is still open.';

const loadOwn = (studentId: string, id: string) =>
  db().askedQuestion.findFirst({
    where: { id, studentId },
    select: { skill: true, item: true, answer: true, mark: true, answeredAt: true },
  });

/** What is told of the skill, and all evidence of it that the student may know of. */
async function standingIn(studentId: string, skill: Skill, clock: Clock) {
  const now = clock.now();
  const [student, evidence] = await Promise.all([
    db().student.findUniqueOrThrow({
      where: { id: studentId },
      select: { class: { select: { timeZone: true } } },
    }),
    shownEvidence(studentId, now),
  ]);
  const pieces = evidence.filter((piece) => piece.skill === skill);
  const { timeZone } = student.class;
  return { told: { standing: masteryOf(pieces, now), timeZone }, pieces };
}

function broughtBy(questionId: string, pieces: readonly SkillPiece[]): AnsweredQuestion['brought'] {
  const index = pieces.findIndex(
    ({ source }) => source.kind === 'question' && source.questionId === questionId,
  );
  const made = index < 0 ? null : whatItMade(pieces, index);
  return made === 'mastery' || made === 'review' ? made : null;
}
