import { z } from 'zod';

/** The files of a class, by the name they carry. */
export const classFiles = [
  'marks.csv',
  'skills.csv',
  'attempts.csv',
  'statements.json',
  'student.zip',
] as const;
export type ClassFile = (typeof classFiles)[number];

export type ExportChoices = {
  /** 'cards': card numbers alone, and no name anywhere in the file. */
  names: 'shown' | 'cards';
  /** Extra attempts and extra time: never unless it is chosen. */
  accommodations: boolean;
  /** Of the one student's file. */
  student: string | null;
};

const choicesSchema = z.object({
  // What cannot be read gives less away.
  names: z.enum(['shown', 'cards']).catch('cards'),
  accommodations: z
    .literal('with')
    .nullable()
    .catch(null)
    .transform((value) => value === 'with'),
  student: z.string().min(1).max(100).nullable().catch(null),
});

export const readExportChoices = (query: Readonly<Record<string, unknown>>): ExportChoices =>
  choicesSchema.parse({ accommodations: null, student: null, ...query });

export const readClassFile = (name: string): ClassFile | null =>
  z.enum(classFiles).safeParse(name).data ?? null;
