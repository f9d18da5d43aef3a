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

export type LabResultRow = z.output<typeof labResultSchema> & {
  studentId: string;
  attemptId: string;
  partId: string;
  lab: Lab;
  template: string;
};

/** A JSON column through a plain query: text here, already read elsewhere. */
const json = z
  .unknown()
  .transform((value): unknown =>
    typeof value === 'string' ? JSON.parse(value) : (value ?? undefined),
  );
const labRowSchema = z.object({
  attemptId: z.string(),
  studentId: z.string(),
  partId: z.string(),
  template: z.string(),
  lab: z.enum(labs),
  total: z.number(),
  criteria: json,
  gates: json,
  slips: json,
  advice: json,
});

/**
 * The first attempts of students who are in the class at every part of its published assignments but
 * question sets, as they are now marked. The first alone: later ones know the feedback to it.
 *
 * A plain query, since of results that can be 30 kB long only a few members are wanted. SQLite from 3.38
 * on and PostgreSQL both know `->`.
 */
export async function firstLabResults(classId: string): Promise<LabResultRow[]> {
  const rows = await db().$queryRaw`
    SELECT m."attemptId", a."studentId", a."partId", a."lab", a."template", m."total",
      m."result" -> 'criteria' AS "criteria", m."result" -> 'gates' AS "gates",
      m."result" -> 'slips' AS "slips", m."result" -> 'advice' AS "advice"
    FROM "Student" s
    JOIN "Attempt" a ON a."studentId" = s."id"
    JOIN "Assignment" t ON t."id" = a."assignmentId"
    JOIN "Mark" m ON m."attemptId" = a."id"
    WHERE s."classId" = ${classId} AND s."leftAt" IS NULL AND t."state" = 'published'
      AND a."mode" = 'check' AND a."status" = 'submitted' AND a."number" = 1
      AND a."partId" IS NOT NULL AND a."lab" <> 'lesson-questions'
    ORDER BY m."graderVersion"`;
  const read = z.array(labRowSchema).parse(rows);
  // Of several versions of a mark the last one stays.
  const newest = new Map(read.map((row) => [row.attemptId, row]));
  return [...newest.values()].map(({ attemptId, studentId, partId, template, lab, ...result }) => ({
    attemptId,
    studentId,
    partId,
    template,
    lab,
    ...labResultSchema.parse(result),
  }));
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
        id: true,
        studentId: true,
        family: true,
        template: true,
        mark: true,
        answeredAt: true,
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

const setRowSchema = z.object({
  attemptId: z.string(),
  studentId: z.string(),
  partId: z.string().nullable(),
  mode: z.enum(['practice', 'check']),
  submittedAt: z.coerce.date(),
  total: z.number(),
  items: json.pipe(
    z.array(z.object({ family: code, template: code, mark: z.number(), answer: z.unknown() })),
  ),
  /** Null where all was right: nothing of it is asked then. */
  keys: json.pipe(z.array(z.object({ item: z.unknown() })).optional()),
});

export type QuestionSetRow = {
  studentId: string;
  /** Of an assignment's set; null of one that was practised. */
  partId: string | null;
  at: number;
  /** 0–100. */
  total: number;
  /** In the set's order; what was left out is worth 0. */
  items: (Omit<AnswerRow, 'studentId' | 'at'> & { answered: boolean })[];
};

/** Each student's first attempt at every assigned set of questions, and all that were practised. */
export async function questionSets(classId: string): Promise<QuestionSetRow[]> {
  const rows = await db().$queryRaw`
    SELECT m."attemptId", a."studentId", a."partId", a."mode", a."submittedAt", m."total",
      m."result" -> 'items' AS "items",
      CASE WHEN m."total" < 100 THEN a."answerKey" -> 'items' END AS "keys"
    FROM "Student" s
    JOIN "Attempt" a ON a."studentId" = s."id"
    JOIN "Mark" m ON m."attemptId" = a."id"
    WHERE s."classId" = ${classId} AND s."leftAt" IS NULL AND a."lab" = 'lesson-questions'
      AND a."status" = 'submitted' AND (a."mode" = 'practice' OR a."number" = 1)
    ORDER BY m."graderVersion"`;
  const newest = new Map(
    z
      .array(setRowSchema)
      .parse(rows)
      .map((row) => [row.attemptId, row]),
  );
  return [...newest.values()].map(({ studentId, partId, mode, submittedAt, total, ...row }) => ({
    studentId,
    total,
    at: submittedAt.getTime(),
    partId: mode === 'check' ? partId : null,
    items: row.items.map(({ family, template, mark, answer }, index) => {
      const item = row.keys?.[index]?.item;
      const answered = answer !== null && answer !== undefined;
      return {
        family,
        template,
        answered,
        share: mark / full,
        raw: answered && mark < full && item !== undefined ? { item, answer } : null,
      };
    }),
  }));
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
