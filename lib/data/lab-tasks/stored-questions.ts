import { z } from 'zod';
import { course } from '../../course/lessons';
import { skills } from '../../course/skills';
import type { LessonQuestionsResult } from '../../grading/questions/question-result';
import type { ItemFeedback } from '../../items/grade-item';
import { itemAnswerSchema } from '../../items/item-answer';
import type { ItemFace } from '../../items/item-face';
import type { QuestionSet, QuestionSetKey } from '../../items/question-set/question-set';
import { drawingSchema, misconceptionsSchema, storedItemSchema } from '../stored-item';

/* The JSON columns of an attempt at the questions of lessons. */

const text = z.string();
const lesson = z.enum(course.map(({ slug }) => slug));
const skill = z.enum(skills);
const lettered = z.array(z.object({ id: text, text }));
const asked = { prompt: text, drawing: drawingSchema.optional() };

const faceSchema: z.ZodType<ItemFace> = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('choice'), ...asked, options: lettered }),
  z.object({ kind: z.literal('several'), ...asked, options: lettered }),
  z.object({ kind: z.literal('order'), ...asked, steps: lettered }),
  z.object({ kind: z.literal('match'), ...asked, left: lettered, right: lettered }),
  z.object({ kind: z.literal('numeric'), ...asked, unit: text }),
  z.object({
    kind: z.literal('point'),
    prompt: text,
    drawing: drawingSchema,
    spots: z.array(z.object({ id: text, x: z.number(), y: z.number(), where: text })),
  }),
]);

export const questionSetSchema: z.ZodType<QuestionSet> = z.object({
  lab: z.literal('lesson-questions'),
  generatorVersion: z.int(),
  template: lesson,
  lessons: z.array(lesson),
  questions: z.array(z.object({ lesson, face: faceSchema })),
});

export const questionSetKeySchema: z.ZodType<QuestionSetKey> = z.object({
  lab: z.literal('lesson-questions'),
  items: z.array(z.object({ skill, item: storedItemSchema })),
});

const feedbackSchema: z.ZodType<ItemFeedback> = z.object({
  mark: z.number(),
  said: z.array(text),
  misconceptions: misconceptionsSchema,
  right: text,
  verdict: z.enum(['right', 'near', 'wrong']),
  explanation: text,
  afterwards: drawingSchema.nullable(),
});

export const questionResultSchema: z.ZodType<LessonQuestionsResult> = z.object({
  lab: z.literal('lesson-questions'),
  graderVersion: z.int(),
  template: lesson,
  total: z.number(),
  items: z.array(
    z.object({
      family: text,
      template: text,
      skill,
      mark: z.number(),
      answer: itemAnswerSchema.nullable(),
      notMarked: z.enum(['other-question', 'no-answer', 'unfinished', 'not-a-number']).nullable(),
      feedback: feedbackSchema,
    }),
  ),
  gates: z.array(z.never()),
});
