import { z } from 'zod';
import { skills } from '../course/skills';
import { knownNoteSchema } from './sign-off-note';

const studentSchema = z.object({
  id: z.string(),
  displayName: z.string(),
  cardNumber: z.number(),
  groupId: z.string().nullable(),
  /** What was mastered in the labs. */
  indoors: z.array(z.enum(skills)),
});
export type SignOffStudent = z.infer<typeof studentSchema>;

const groupSchema = z.object({
  id: z.string(),
  name: z.string(),
  /** The name of the telescope they share. */
  telescope: z.string().nullable(),
});
export type SignOffGroup = z.infer<typeof groupSchema>;

/** Two assessors who looked at the same student, skill and evening. */
const agreementSchema = z.object({
  pairs: z.number(),
  /** Share of pairs with the same level, 0–1. */
  alike: z.number(),
  /** κ with quadratic weights; null when all gave one level, so that chance alone would agree. */
  weighted: z.number().nullable(),
  /** How often the one gave the row's level where the other gave the column's. */
  table: z.array(z.array(z.number())),
});
export type AssessorAgreement = z.infer<typeof agreementSchema>;

/** The page of a class at the telescope: read from the server, or from what a device was asked to keep. */
export const signOffSheetSchema = z.object({
  classId: z.string(),
  className: z.string(),
  /** IANA; evenings go by it. */
  timeZone: z.string(),
  needed: z.union([z.literal(3), z.literal(4)]),
  /** Who writes; null for who only reads. */
  teacherId: z.string().nullable(),
  /** Names of the telescopes that a group can be given. */
  telescopes: z.array(z.string()),
  groups: z.array(groupSchema),
  /** By card number; who has left is not asked outside. */
  students: z.array(studentSchema),
  notes: z.array(knownNoteSchema),
  /** Null while no two have looked at the same. A device keeps none, and an older page another one. */
  agreement: agreementSchema.nullable().catch(null),
});
export type SignOffSheet = z.infer<typeof signOffSheetSchema>;
