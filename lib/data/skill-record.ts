import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import type { Skill } from '../course/skills';
import { itemAnswerSchema } from '../items/item-answer';
import { itemBank } from '../items/item-bank';
import { faceOfItem } from '../items/item-face';
import { passes } from '../mastery/evidence';
import { masteryOf, type Mastery } from '../mastery/mastery';
import { whatItMade, type Made } from '../mastery/what-it-made';
import { classAccessSelect } from './access';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { feedbackOf } from './question-feedback';
import type { AnsweredQuestion } from './questions';
import { collectEvidence, type SkillPiece } from './skill-evidence';
import { storedItemSchema } from './stored-item';

/** A question of a lesson as it was put, answered and marked. */
type RecordedQuestion = Pick<AnsweredQuestion, 'face' | 'answer' | 'feedback'>;

export type RecordedPiece = SkillPiece & {
  passed: boolean;
  made: Made;
  /** What a question was about; null for a lab, and for a family that is no longer asked. */
  about: string | null;
  /** Null for what was handed in as an attempt, which has a page of its own. */
  question: RecordedQuestion | null;
};
export type SkillRecord = {
  student: {
    id: string;
    displayName: string;
    classId: string;
    className: string;
    timeZone: string;
  };
  standing: Mastery;
  /** Every piece of evidence, oldest first. */
  pieces: RecordedPiece[];
};

/** Everything behind one student's standing in one skill, for the class's teachers. */
export async function getSkillRecord(
  viewer: Viewer,
  studentId: string,
  skill: Skill,
  clock: Clock = systemClock,
): Promise<SkillRecord | null> {
  const student = await db().student.findUnique({
    where: { id: studentId },
    select: {
      displayName: true,
      class: { select: { ...classAccessSelect, name: true, timeZone: true } },
    },
  });
  if (student === null || !canSeeClass(viewer, student.class)) return null;
  const now = clock.now();
  const [evidence, questions] = await Promise.all([
    collectEvidence({ studentId }, now),
    db().askedQuestion.findMany({
      where: { studentId, skill, answeredAt: { lte: now } },
      select: { id: true, item: true, answer: true },
    }),
  ]);
  const pieces = evidence.filter((piece) => piece.skill === skill);
  const byId = new Map(questions.map((question) => [question.id, question]));
  const { id: classId, name: className, timeZone } = student.class;
  return {
    student: { id: studentId, displayName: student.displayName, classId, className, timeZone },
    standing: masteryOf(pieces, now),
    pieces: pieces.map((piece, index) => {
      const { source } = piece;
      const row = source.kind === 'question' ? byId.get(source.questionId) : undefined;
      return {
        ...{ ...piece, passed: passes(piece), made: whatItMade(pieces, index) },
        about: source.kind === 'lab' ? null : titleOf(source.family),
        question: row === undefined ? null : asAnswered(row),
      };
    }),
  };
}

const titleOf = (family: string): string | null =>
  itemBank.find(({ id }) => id === family)?.title ?? null;

const asAnswered = (row: { item: unknown; answer: unknown }): RecordedQuestion => ({
  face: faceOfItem(storedItemSchema.parse(row.item)),
  answer: itemAnswerSchema.parse(row.answer),
  feedback: feedbackOf(row),
});
