import { z } from 'zod';
import { skills } from '../course/skills';
import { checkItemSchema } from './check-item';

const slug = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'use small letters, figures and hyphens');
const text = z.string().trim().min(1);
/** YAML reads 2026-11-25 as a date; both are taken. */
const date = z.union([
  z.date().transform((value) => value.toISOString().slice(0, 10)),
  z.iso.date(),
]);

const hazardSchema = z.strictObject({
  id: slug,
  severity: z.enum(['danger', 'caution']),
  text,
  /** A gate: no score buys it off. */
  gate: z.boolean(),
});

const sourceSchema = z.strictObject({
  text,
  url: z.url({ protocol: /^https$/ }).optional(),
});

/** What stands above the dashes of content/lessons/<slug>/lesson.mdx. */
export const lessonFrontMatterSchema = z.strictObject({
  id: slug,
  version: z.number().int().positive(),
  title: text,
  summary: text,
  objectives: z.array(z.strictObject({ id: slug, skill: z.enum(skills), text })).min(1),
  standards: z.array(
    z.strictObject({ code: text, name: text, alignment: z.enum(['full', 'partial']) }),
  ),
  level: text,
  minutes: z.strictObject({
    learn: z.number().int().positive(),
    practise: z.number().int().min(0),
  }),
  prerequisites: z.array(slug),
  previous: slug.nullable(),
  next: slug.nullable(),
  equipment: z.array(text),
  hazards: z.array(hazardSchema),
  vocabulary: z.array(z.strictObject({ term: text, definition: text })),
  /** Questions from earlier lessons; `from` names the skill that they call back. */
  retrieval: z.array(z.strictObject({ from: z.enum(skills), item: checkItemSchema })),
  /** Questions of the faded practice and of the check at the end. */
  checks: z.array(
    z.strictObject({ stage: z.enum(['faded', 'check']), objective: slug, item: checkItemSchema }),
  ),
  practical: z.strictObject({
    task: text,
    evidence: z.array(text).min(1),
  }),
  sources: z.array(sourceSchema).min(1),
  reviewed: date,
});
export type LessonFrontMatter = z.output<typeof lessonFrontMatterSchema>;
