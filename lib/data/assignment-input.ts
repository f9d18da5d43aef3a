import { z } from 'zod';
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

const assignmentFieldsSchema = z.strictObject({
  lab: z.enum(labs),
  title: z.string().trim().min(1, 'Give the assignment a title.').max(120),
  ...assignmentScenarioSchema.shape,
  /** Kinds of task of that lab. */
  templates: z
    .array(z.string().max(60))
    .min(1, 'Choose at least one kind of task.')
    .refine((list) => new Set(list).size === list.length, {
      error: 'A kind of task is named twice.',
    }),
  /** The variants' instants lie within ± this many minutes of the scenario's. */
  windowMinutes: z.number().int().min(0).max(180),
  /** Minutes for full marks, in a lab where time can count; null: it does not. */
  minutesAllowed: z.number().int().min(5).max(120).nullable(),
  policy: assignmentPolicySchema,
  /** IANA zone the due time is shown in. */
  dueTimeZone: z.string().min(1).max(60),
  lessonSlug: z
    .string()
    .regex(/^[a-z0-9-]{1,80}$/)
    .nullable(),
});

/** What the assignment form sends; browser and server read it with the same schema. */
export const assignmentInputSchema = assignmentFieldsSchema
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
