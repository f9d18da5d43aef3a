import { z } from 'zod';

/** What can happen to one cell of the gradebook, as the audit names it. */
export const cellActions = [
  'mark-overridden',
  'excused',
  'due-extended',
  'regraded',
  'returned',
  'return-taken-back',
  'commented',
  'undone',
] as const;
export type CellAction = (typeof cellActions)[number];

/** What the audit's line about a cell is about; with an attempt of it where it is about one. */
export const cellSubject = (cell: {
  studentId: string;
  assignmentId: string;
  attemptId?: string;
}): string =>
  `student ${cell.studentId} assignment ${cell.assignmentId}` +
  (cell.attemptId === undefined ? '' : ` attempt ${cell.attemptId}`);

/** The attempt that a subject names, null where it names none. */
export const attemptOfSubject = (subject: string): string | null =>
  / attempt (\S+)$/.exec(subject)?.[1] ?? null;

/** Either side of a line about a cell: each action fills in what it changes. */
export const cellValuesSchema = z.object({
  mark: z.number().nullish(),
  excused: z.boolean().optional(),
  note: z.string().optional(),
  /** UTC, ISO 8601. */
  dueAt: z.string().nullish(),
  graderVersion: z.number().optional(),
  total: z.number().optional(),
  gateFailed: z.boolean().optional(),
  /** The whole result that another of the same grader took the place of. */
  result: z.json().optional(),
  returnedAt: z.string().nullish(),
  criterion: z.string().optional(),
  text: z.string().nullish(),
  /** Whose comment it was, by id, so that undoing puts it back under that name; null: nobody's any more. */
  by: z.string().nullish(),
  /** Of an undoing: which line it undoes, and what that had done. */
  undoes: z.string().optional(),
  undoneAction: z.enum(cellActions).optional(),
});
export type CellValues = z.output<typeof cellValuesSchema>;

/** What of it is shown: a whole result and an author's id are kept for undoing alone. */
export const shownValuesSchema = cellValuesSchema.omit({ result: true, by: true });
export type ShownValues = z.output<typeof shownValuesSchema>;
