import { z } from 'zod';
import { mostStudents } from '../roster/student-name';

const idSchema = z.string().trim().min(1).max(255);

/** A list of students as the browser read it out of typing, a table or a OneRoster zip. */
export const rosterListSchema = z
  .object({
    completeness: z.enum(['whole-class', 'some']),
    /** The class's id in a OneRoster file; null for a plain list. */
    classSourcedId: idSchema.nullable(),
    keepNames: z.boolean(),
    entries: z
      .array(
        z.object({
          row: z.number().int().min(1).max(10_000_000),
          sourcedId: idSchema.nullable(),
          name: z.string().max(1000),
        }),
      )
      .max(
        mostStudents,
        `A class holds at most ${String(mostStudents)} students, and this list has more. Nothing was taken.`,
      ),
    gone: z.array(idSchema).max(20_000),
  })
  // An empty list of a whole class is a mistake: everybody would have left.
  .refine(
    ({ entries, gone, completeness }) =>
      entries.length > 0 || (completeness === 'some' && gone.length > 0),
    'There is no student in it.',
  );
export type RosterList = z.infer<typeof rosterListSchema>;

const studentId = z.string().min(1).max(100);
const students = z.array(studentId).max(mostStudents);

/** What it takes to take an import back, as the import itself said. */
export const importUndoSchema = z.object({
  added: students,
  left: students,
  learnedId: students,
  back: z.array(z.object({ studentId, leftAt: z.iso.datetime() })).max(mostStudents),
  renamed: z
    .array(z.object({ studentId, from: z.string().min(1).max(200), to: z.string().max(200) }))
    .max(mostStudents),
  classSourcedId: z.object({ from: idSchema.nullable(), to: idSchema.nullable() }),
});
export type ImportUndo = z.infer<typeof importUndoSchema>;
