import { z } from 'zod';
import { course } from '../course/lessons';
import { labOptions, labs } from '../variants/labs';
import { assignmentScenarioSchema } from './scenario-input';

export const feedbackTimes = ['at-once', 'after-due', 'when-released'] as const;
export type FeedbackTime = (typeof feedbackTimes)[number];
export const countingAttempts = ['best', 'last', 'first', 'average'] as const;
export type CountingAttempt = (typeof countingAttempts)[number];

export const assignmentPolicySchema = z
  .strictObject({
    /** null: as many as the student likes. */
    attemptsAllowed: z.number().int().min(1, 'Allow at least one attempt.').max(50).nullable(),
    /** UTC, ISO 8601; null: no due time. */
    dueAt: z.iso.datetime({ error: 'The due time is not a date and time.' }).nullable(),
    graceMinutes: z.number().int().min(0).max(1440),
    /** Share of the mark lost per started day, 0–1. */
    latePenaltyPerDay: z.number().min(0).max(1),
    /** The most that lateness can take, 0–1. */
    latePenaltyCap: z.number().min(0).max(1),
    passMark: z.number().min(0).max(100),
    feedback: z.enum(feedbackTimes),
    counting: z.enum(countingAttempts),
  })
  .refine((policy) => policy.feedback !== 'after-due' || policy.dueAt !== null, {
    path: ['feedback'],
    error: 'Feedback after the due time needs a due time.',
  });
export type AssignmentPolicy = z.output<typeof assignmentPolicySchema>;

const lessonSlug = z.enum(
  course.map(({ slug }) => slug),
  { error: 'This lesson is not known.' },
);
const twice = (list: readonly string[]): boolean => new Set(list).size !== list.length;

export const mostParts = 12;
const weight = z
  .number({ error: 'Give the weight as a number.' })
  .min(0, 'A weight lies between 0 and 100.')
  .max(100, 'A weight lies between 0 and 100.');

/** One marked part of an assignment: a lab, the rehearsal or questions on lessons. */
const assignmentPartSchema = z
  .strictObject({
    /** The part that this one goes on from; without it, the next of that lab, or a new one. */
    id: z.string().max(60).optional(),
    lab: z.enum(labs),
    /** Kinds of task of that lab; for questions, the lessons that are asked about. */
    templates: z
      .array(z.string().max(60))
      .min(1, 'Choose at least one kind of task.')
      .refine((list) => !twice(list), { error: 'A kind of task is named twice.' }),
    /** The variants' instants lie within ± this many minutes of the scenario's. */
    windowMinutes: z.number().int().min(0).max(180),
    /** Minutes for full marks, in a lab where time can count; null: it does not. */
    minutesAllowed: z.number().int().min(5).max(120).nullable(),
    /** How much it counts beside the other parts; 0: it is done, and counts for nothing. */
    weight,
  })
  .refine(
    ({ lab, templates }) => {
      const known: readonly string[] = labOptions[lab].templates;
      return templates.every((template) => known.includes(template));
    },
    { path: ['templates'], error: 'One of these kinds of task is not one of this lab.' },
  )
  .refine(({ lab, minutesAllowed }) => minutesAllowed === null || labOptions[lab].canBeTimed, {
    path: ['minutesAllowed'],
    error: 'Time does not count in this lab.',
  });
export type AssignmentPartInput = z.output<typeof assignmentPartSchema>;

/** What the assignment form sends; browser and server read it with the same schema. */
export const assignmentInputSchema = z.strictObject({
  title: z.string().trim().min(1, 'Give the assignment a title.').max(120),
  /** One evening for all its parts. */
  ...assignmentScenarioSchema.shape,
  parts: z
    .array(assignmentPartSchema)
    .min(1, 'Add at least one part that is marked.')
    .max(mostParts, `An assignment has at most ${String(mostParts)} parts.`)
    .refine((parts) => !twice(parts.flatMap(({ id }) => (id === undefined ? [] : [id]))), {
      error: 'A part is named twice.',
    })
    .refine((parts) => parts.some((part) => part.weight > 0), {
      error: 'Let at least one part count: give it a weight above 0.',
    }),
  /** Slugs of the lessons to read, in that order. */
  lessons: z
    .array(lessonSlug)
    .max(12, 'At most twelve lessons go with an assignment.')
    .refine((list) => !twice(list), { error: 'A lesson is named twice.' }),
  /** How much it counts in a student's mean of all assignments; 0: it does not. */
  weight,
  /** Complete only when the skills of its labs are signed off at the real telescope too. */
  needsSignOff: z.boolean(),
  policy: assignmentPolicySchema,
  /** IANA zone the due time is shown in. */
  dueTimeZone: z.string().min(1).max(60),
});
export type AssignmentInput = z.output<typeof assignmentInputSchema>;

/** What a new assignment starts from. */
export const defaultAssignmentPolicy: AssignmentPolicy = {
  attemptsAllowed: 2,
  dueAt: null,
  graceMinutes: 15,
  latePenaltyPerDay: 0.1,
  latePenaltyCap: 0.5,
  passMark: 70,
  feedback: 'at-once',
  counting: 'best',
};
