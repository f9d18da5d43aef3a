import 'server-only';
import { z } from 'zod';
import { labs } from '../variants/labs';
import { db } from './db';
import { Prisma } from './generated/client';
import { mapInTurns } from './in-turns';

const here = (classId: string) => ({ classId, leftAt: null });

/** So many at once: of 200 a query would hold the process for half a second. */
const studentsAtOnce = 10;

/** What `ask` finds of everybody who is in the class, some students after others, each row read by `read`. */
async function ofStudents<Row>(
  classId: string,
  ask: (students: Prisma.Sql) => Promise<unknown>,
  read: (row: unknown) => Row,
): Promise<Row[]> {
  const students = await db().student.findMany({ where: here(classId), select: { id: true } });
  const ids = students.map(({ id }) => id);
  const found: Row[][] = [];
  for (let from = 0; from < ids.length; from += studentsAtOnce) {
    const rows = await ask(Prisma.join(ids.slice(from, from + studentsAtOnce)));
    found.push(await mapInTurns(z.array(z.unknown()).parse(rows), read));
  }
  return found.flat();
}

const code = z.string();
/** A JSON column through a plain query: text here, already read elsewhere. */
const json = z
  .unknown()
  .transform((value): unknown =>
    typeof value === 'string' ? JSON.parse(value) : (value ?? undefined),
  );
/** What the results of all labs have in common, leniently: each was written by this product. */
const labRowSchema = z.object({
  attemptId: z.string(),
  studentId: z.string(),
  partId: z.string(),
  template: z.string(),
  lab: z.enum(labs),
  total: z.number(),
  criteria: json.pipe(z.array(z.object({ id: code, earned: z.number(), possible: z.number() }))),
  /** Of a rehearsal: the stage, and that stage's own gate. */
  gates: json.pipe(z.array(z.object({ id: code, gate: code.optional() })).default([])),
  slips: json.pipe(
    z
      .array(
        z.object({
          code,
          stage: code.optional(),
          first: code.optional(),
          mistake: code.nullish(),
          because: code.nullish(),
          slip: code.nullish(),
        }),
      )
      .default([]),
  ),
  advice: json.pipe(z.object({ code }).optional()),
});
export type LabResultRow = z.output<typeof labRowSchema>;

/**
 * The first attempts of students who are in the class at every part of its published assignments but
 * question sets, as they are now marked. The first alone: later ones know the feedback to it.
 *
 * A plain query, since of results that can be 30 kB long only a few members are wanted. SQLite from 3.38
 * on and PostgreSQL both know `->`.
 */
export async function firstLabResults(classId: string): Promise<LabResultRow[]> {
  const read = await ofStudents(
    classId,
    (students) => db().$queryRaw`
    SELECT m."attemptId", a."studentId", a."partId", a."lab", a."template", m."total",
      m."result" -> 'criteria' AS "criteria", m."result" -> 'gates' AS "gates",
      m."result" -> 'slips' AS "slips", m."result" -> 'advice' AS "advice"
    FROM "Attempt" a
    JOIN "Assignment" t ON t."id" = a."assignmentId"
    JOIN "Mark" m ON m."attemptId" = a."id"
    WHERE a."studentId" IN (${students}) AND t."state" = 'published' AND a."mode" = 'check' AND a."status" = 'submitted' AND a."number" = 1
      AND a."partId" IS NOT NULL AND a."lab" <> 'lesson-questions'
    ORDER BY m."graderVersion"`,
    (row) => labRowSchema.parse(row),
  );
  // Of several versions of a mark the last one stays.
  return [...new Map(read.map((row) => [row.attemptId, row])).values()];
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

const practisedRowSchema = z.object({
  studentId: z.string(),
  family: z.string(),
  template: z.string(),
  mark: z.number(),
  answeredAt: z.coerce.date(),
  item: json,
  answer: json,
});

/**
 * Every answer to a question of a lesson's practice that counts, of students who are in the class. What
 * was asked and answered is long, and read only where something was wrong.
 */
export async function practisedAnswers(classId: string): Promise<AnswerRow[]> {
  return ofStudents(
    classId,
    (students) => db().$queryRaw`
    SELECT q."studentId", q."family", q."template", q."mark", q."answeredAt",
      CASE WHEN q."mark" < 100 THEN q."item" END AS "item",
      CASE WHEN q."mark" < 100 THEN q."answer" END AS "answer"
    FROM "AskedQuestion" q
    WHERE q."studentId" IN (${students}) AND q."answeredAt" IS NOT NULL AND q."mark" IS NOT NULL`,
    (row) => {
      const { studentId, family, template, mark, answeredAt, item, answer } =
        practisedRowSchema.parse(row);
      return {
        studentId,
        family,
        template,
        share: mark / full,
        at: answeredAt.getTime(),
        raw: mark < full ? { item, answer } : null,
      };
    },
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
  const read = await ofStudents(
    classId,
    (students) => db().$queryRaw`
    SELECT m."attemptId", a."studentId", a."partId", a."mode", a."submittedAt", m."total",
      m."result" -> 'items' AS "items",
      CASE WHEN m."total" < 100 THEN a."answerKey" -> 'items' END AS "keys"
    FROM "Attempt" a
    JOIN "Mark" m ON m."attemptId" = a."id"
    WHERE a."studentId" IN (${students}) AND a."lab" = 'lesson-questions'
      AND a."status" = 'submitted' AND (a."mode" = 'practice' OR a."number" = 1)
    ORDER BY m."graderVersion"`,
    (row) => setRowSchema.parse(row),
  );
  const newest = new Map(read.map((row) => [row.attemptId, row]));
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
