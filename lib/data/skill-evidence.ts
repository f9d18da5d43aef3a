import 'server-only';
import { z } from 'zod';
import { skills } from '../course/skills';
import { evidenceOf, type MarkedWork, type WorkEvidence } from '../mastery/attempt-evidence';
import { practicePassMark, type Evidence } from '../mastery/evidence';
import { labs, type Lab } from '../variants/labs';
import { standingOf, standingSelect } from './attempt-standing';
import { db } from './db';

/** Evidence with what it came from. */
export type SkillPiece = Evidence & {
  studentId: string;
  mode: 'practice' | 'check';
  source: PieceSource;
  /** Marked, but the teacher's policy does not let the student know yet. */
  withheld: boolean;
};
type PieceSource =
  | { kind: 'question'; questionId: string; family: string }
  /** One question of a set that was handed in. */
  | { kind: 'item'; attemptId: string; family: string; title: string }
  | {
      kind: 'lab';
      attemptId: string;
      lab: Lab;
      template: string;
      /** The assignment's, or the lab's own in practice. */
      title: string;
      /** The mark, whether a gate failed, or what a rehearsal showed. */
      from: Exclude<WorkEvidence['from'], 'item'>;
    };

type Whose = { studentId: string } | { student: { classId: string } };

const skill = z.enum(skills);
const lab = z.enum(labs);

/** All evidence of one student or one class, as it is now marked, in order of time. */
export async function collectEvidence(whose: Whose, now: Date): Promise<SkillPiece[]> {
  const pieces = await Promise.all([questionPieces(whose, now), attemptPieces(whose, now)]);
  return pieces.flat().sort((a, b) => a.at.getTime() - b.at.getTime());
}

/** What the student may know of: without what a teacher's policy still withholds. */
export async function shownEvidence(studentId: string, now: Date): Promise<SkillPiece[]> {
  return (await collectEvidence({ studentId }, now)).filter(({ withheld }) => !withheld);
}

async function questionPieces(whose: Whose, now: Date): Promise<SkillPiece[]> {
  const rows = await db().askedQuestion.findMany({
    where: { ...whose, answeredAt: { lte: now } },
    orderBy: [{ answeredAt: 'asc' }, { number: 'asc' }],
    select: {
      id: true,
      studentId: true,
      skill: true,
      family: true,
      template: true,
      mark: true,
      answeredAt: true,
    },
  });
  return rows.flatMap(({ id, family, template, mark, answeredAt, ...row }) =>
    mark === null || answeredAt === null
      ? []
      : {
          studentId: row.studentId,
          skill: skill.parse(row.skill),
          template: `${family}/${template}`,
          mark,
          passMark: practicePassMark,
          gateFailed: false,
          at: answeredAt,
          mode: 'practice',
          withheld: false,
          source: { kind: 'question', questionId: id, family },
        },
  );
}

const attemptSelect = {
  id: true,
  studentId: true,
  lab: true,
  template: true,
  title: true,
  marks: {
    orderBy: { graderVersion: 'desc' as const },
    take: 1,
    select: { total: true, gateFailed: true },
  },
  ...standingSelect,
};

async function attemptPieces(whose: Whose, now: Date): Promise<SkillPiece[]> {
  const [attempts, parts] = await Promise.all([
    db().attempt.findMany({
      where: { ...whose, status: 'submitted', submittedAt: { lte: now } },
      orderBy: [{ submittedAt: 'asc' }, { number: 'asc' }],
      select: attemptSelect,
    }),
    partsOfResults(whose),
  ]);
  return attempts.flatMap((attempt) => {
    const [mark] = attempt.marks;
    if (mark === undefined || attempt.submittedAt === null) return [];
    const { feedbackVisible, policy } = standingOf(attempt, now);
    const { id: attemptId, studentId, mode, template, title } = attempt;
    const work: MarkedWork = {
      template,
      total: mark.total,
      gateFailed: mark.gateFailed,
      at: attempt.submittedAt,
      passMark: policy?.passMark ?? practicePassMark,
      ...kindOf(attempt.lab, parts.get(attemptId)),
    };
    return evidenceOf(work).map(({ from, ...evidence }) => ({
      ...evidence,
      studentId,
      mode,
      withheld: !feedbackVisible,
      source:
        from === 'item'
          ? { kind: 'item', attemptId, family: evidence.template.split('/')[0] ?? '', title }
          : { kind: 'lab', attemptId, lab: lab.parse(attempt.lab), template, title, from },
    }));
  });
}

/** The part of a result that tells of several skills, by this product's own hand. */
const partsSchema = {
  'dress-rehearsal': z.object({ skills: z.array(z.object({ skill, shown: z.boolean() })) }),
  'lesson-questions': z.object({
    items: z
      .array(
        z.object({
          family: z.string(),
          template: z.string(),
          skill,
          mark: z.number(),
          answer: z.unknown(),
        }),
      )
      // What was left unanswered tells nothing of a skill.
      .transform((items) => items.filter(({ answer }) => answer !== null)),
  }),
};

/** The results of those two labs, by their attempts; the others' marks say all, and can be long. */
async function partsOfResults(whose: Whose): Promise<ReadonlyMap<string, unknown>> {
  const marks = await db().mark.findMany({
    where: {
      attempt: { ...whose, status: 'submitted', lab: { in: Object.keys(partsSchema) } },
    },
    orderBy: { graderVersion: 'asc' },
    select: { attemptId: true, result: true },
  });
  // Of several versions of a mark the last one stays.
  return new Map(marks.map(({ attemptId, result }) => [attemptId, result]));
}

function kindOf(stored: string, result: unknown) {
  const name = lab.parse(stored);
  switch (name) {
    case 'dress-rehearsal':
      return { lab: name, ...partsSchema[name].parse(result) };
    case 'lesson-questions':
      return { lab: name, ...partsSchema[name].parse(result) };
    default:
      return { lab: name };
  }
}
