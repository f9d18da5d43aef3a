import 'server-only';
import { canReadNotes, canSeeClass, canTeachClass, roleIn, type Viewer } from '../auth/policy';
import type { Skill } from '../course/skills';
import { itemAnswerSchema } from '../items/item-answer';
import { itemBank } from '../items/item-bank';
import { faceOfItem } from '../items/item-face';
import { passes } from '../mastery/evidence';
import { masteryOf, type Mastery } from '../mastery/mastery';
import { whatItMade, type Made } from '../mastery/what-it-made';
import { classAccessSelect, teacherIdOf } from './access';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { observationSelect, readObservation, type ReadObservation } from './observation-rows';
import { feedbackOf } from './question-feedback';
import type { AnsweredQuestion } from './questions';
import { signOffStandings, type SignOffStanding } from './sign-off-standings';
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
  /** At the real telescope: null when nobody has seen it there. */
  signOff: SignOffStanding | null;
  observations: RecordedObservation[];
};

/** What an assessor saw at the real telescope. */
export type RecordedObservation = Pick<
  ReadObservation,
  | 'key'
  | 'evening'
  | 'level'
  | 'gates'
  | 'prompts'
  | 'note'
  | 'instrument'
  | 'conditions'
  | 'observedAt'
  | 'receivedAt'
> & {
  /** Null when the account is gone. */
  assessor: string | null;
  /** The viewer may take it back. */
  mayTakeBack: boolean;
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
  const [signOff, observations, evidence, questions] = await Promise.all([
    signOffStandings(student.class.id, studentId),
    db().observation.findMany({
      where: { studentId, skill, retractedAt: null },
      orderBy: [{ observedAt: 'asc' }, { id: 'asc' }],
      select: { ...observationSelect, assessor: { select: { displayName: true } } },
    }),
    collectEvidence({ studentId }, now),
    db().askedQuestion.findMany({
      where: { studentId, skill, answeredAt: { lte: now } },
      select: { id: true, item: true, answer: true, mark: true },
    }),
  ]);
  const pieces = evidence.filter((piece) => piece.skill === skill);
  const byId = new Map(questions.map((question) => [question.id, question]));
  const { id: classId, name: className, timeZone } = student.class;
  return {
    student: { id: studentId, displayName: student.displayName, classId, className, timeZone },
    standing: masteryOf(pieces, now),
    signOff: signOff.get(studentId)?.get(skill) ?? null,
    observations: observations.map(({ assessor, ...row }) => {
      const read = readObservation(row, timeZone);
      const { key, evening, level, gates, prompts, note, instrument, conditions } = read;
      const mine =
        row.assessorId === teacherIdOf(viewer) || roleIn(viewer, student.class) === 'owner';
      return {
        key,
        evening,
        level,
        gates,
        prompts,
        instrument,
        conditions,
        note: canReadNotes(viewer, student.class) ? note : '',
        observedAt: row.observedAt,
        receivedAt: row.receivedAt,
        assessor: assessor?.displayName ?? null,
        mayTakeBack: mine && canTeachClass(viewer, student.class),
      };
    }),
    pieces: pieces.map((piece, index) => {
      const { source } = piece;
      const row = source.kind === 'question' ? byId.get(source.questionId) : undefined;
      return {
        ...piece,
        passed: passes(piece),
        made: whatItMade(pieces, index),
        about: source.kind === 'lab' ? null : titleOf(source.family),
        question: row === undefined ? null : asAnswered(row),
      };
    }),
  };
}

const titleOf = (family: string): string | null =>
  itemBank.find(({ id }) => id === family)?.title ?? null;

const asAnswered = (row: {
  item: unknown;
  answer: unknown;
  mark: number | null;
}): RecordedQuestion => ({
  face: faceOfItem(storedItemSchema.parse(row.item)),
  answer: itemAnswerSchema.parse(row.answer),
  feedback: feedbackOf(row),
});
