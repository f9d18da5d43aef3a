import 'server-only';
import { z } from 'zod';
import { labs, type Lab } from '../variants/labs';
import { db } from './db';

const here = (classId: string) => ({ classId, leftAt: null });

const code = z.string();
/** What the results of all labs have in common, leniently: each was written by this product. */
const labResultSchema = z.object({
  total: z.number(),
  criteria: z.array(z.object({ id: code, earned: z.number(), possible: z.number() })),
  /** Of a rehearsal: the stage, and that stage's own gate. */
  gates: z.array(z.looseObject({ id: code, gate: code.optional() })).default([]),
  slips: z
    .array(
      z.looseObject({
        code,
        stage: code.optional(),
        first: code.optional(),
        mistake: code.nullish(),
        because: code.nullish(),
        slip: code.nullish(),
      }),
    )
    .default([]),
  advice: z.looseObject({ code }).optional(),
});
const labSchema = z.enum(labs);

export type LabResultRow = z.output<typeof labResultSchema> & {
  studentId: string;
  attemptId: string;
  partId: string;
  lab: Lab;
  template: string;
};

/**
 * The first attempts of students who are in the class at every part of its published assignments but
 * question sets, as they are now marked. The first alone: later ones know the feedback to it.
 */
export async function firstLabResults(classId: string): Promise<LabResultRow[]> {
  const marks = await db().mark.findMany({
    where: {
      attempt: {
        ...{ student: here(classId), mode: 'check', status: 'submitted', number: 1 },
        ...{ lab: { not: 'lesson-questions' }, assignment: { classId, state: 'published' } },
      },
    },
    orderBy: { graderVersion: 'asc' },
    select: {
      attemptId: true,
      result: true,
      attempt: { select: { studentId: true, partId: true, lab: true, template: true } },
    },
  });
  // Of several versions of a mark the last one stays.
  const newest = new Map(marks.map((mark) => [mark.attemptId, mark]));
  return [...newest.values()].flatMap(({ attemptId, result, attempt }) => {
    const { studentId, partId, lab, template } = attempt;
    return partId === null
      ? []
      : [
          {
            ...{ studentId, attemptId, partId, template, lab: labSchema.parse(lab) },
            ...labResultSchema.parse(result),
          },
        ];
  });
}

/** One answer to one question, wherever it was asked; `raw`: its JSON, where something was wrong. */
export type AnswerRow = {
  studentId: string;
  family: string;
  template: string;
  /** 0–1. */
  share: number;
  at: number;
  raw: { item: unknown; answer: unknown } | null;
};

const full = 100;

/** Every answer to a question of a lesson's practice that counts, of students who are in the class. */
export async function practisedAnswers(classId: string): Promise<AnswerRow[]> {
  const where = { student: here(classId), answeredAt: { not: null } };
  const [rows, wrong] = await Promise.all([
    db().askedQuestion.findMany({
      where,
      select: {
        ...{ id: true, studentId: true, family: true, template: true },
        ...{ mark: true, answeredAt: true },
      },
    }),
    // What was asked and answered is long, and needed only where something was wrong.
    db().askedQuestion.findMany({
      where: { ...where, mark: { lt: full } },
      select: { id: true, item: true, answer: true },
    }),
  ]);
  const raws = new Map(wrong.map(({ id, item, answer }) => [id, { item, answer }]));
  return rows.flatMap(({ id, mark, answeredAt, ...row }) =>
    mark === null || answeredAt === null
      ? []
      : [{ ...row, share: mark / full, at: answeredAt.getTime(), raw: raws.get(id) ?? null }],
  );
}

const setResultSchema = z.object({
  total: z.number(),
  items: z.array(z.object({ family: code, template: code, mark: z.number(), answer: z.unknown() })),
});
const setKeySchema = z.object({ items: z.array(z.object({ item: z.unknown() })) });

export type QuestionSetRow = {
  studentId: string;
  /** Of an assignment's set; null of one that was practised. */
  partId: string | null;
  number: number;
  at: number;
  /** 0–100. */
  total: number;
  /** In the set's order; what was left out is worth 0. */
  items: (Omit<AnswerRow, 'studentId' | 'at'> & { answered: boolean })[];
};

/** Every set of questions that was handed in, practised ones too, by students who are in the class. */
export async function questionSets(classId: string): Promise<QuestionSetRow[]> {
  const attempts = await db().attempt.findMany({
    where: { student: here(classId), lab: 'lesson-questions', status: 'submitted' },
    select: {
      ...{ id: true, studentId: true, partId: true, mode: true, number: true },
      ...{ submittedAt: true, answerKey: true },
    },
  });
  const marks = await db().mark.findMany({
    where: {
      attempt: { student: here(classId), lab: 'lesson-questions', status: 'submitted' },
    },
    orderBy: { graderVersion: 'asc' },
    select: { attemptId: true, result: true },
  });
  const results = new Map(marks.map(({ attemptId, result }) => [attemptId, result]));
  return attempts.flatMap(({ id, studentId, partId, mode, number, submittedAt, answerKey }) => {
    const stored = results.get(id);
    if (stored === undefined || submittedAt === null) return [];
    const { total, items } = setResultSchema.parse(stored);
    const keys = setKeySchema.parse(answerKey).items;
    return [
      {
        ...{ studentId, number, total, at: submittedAt.getTime() },
        partId: mode === 'check' ? partId : null,
        items: items.map(({ family, template, mark, answer }, index) => {
          const item = keys[index]?.item;
          const answered = answer !== null && answer !== undefined;
          return {
            ...{ family, template, answered, share: mark / full },
            raw: answered && mark < full && item !== undefined ? { item, answer } : null,
          };
        }),
      },
    ];
  });
}

/** The level of help that each student of the class took at last, by skill: skill → student → level. */
export async function latestLevels(
  classId: string,
): Promise<ReadonlyMap<string, ReadonlyMap<string, number>>> {
  const notes = await db().observation.findMany({
    where: { student: here(classId), retractedAt: null },
    orderBy: { observedAt: 'asc' },
    select: { studentId: true, skill: true, level: true },
  });
  const levels = new Map<string, Map<string, number>>();
  for (const { studentId, skill, level } of notes) {
    const there = levels.get(skill) ?? new Map<string, number>();
    levels.set(skill, there.set(studentId, level));
  }
  return levels;
}
