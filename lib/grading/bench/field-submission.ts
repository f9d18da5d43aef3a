import { z } from 'zod';

/** What the learner did. Never a score. */
export const fieldSubmissionSchema = z.strictObject({});
export type FieldSubmission = z.infer<typeof fieldSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const fieldDraftSchema = z.strictObject({});
export type FieldDraft = z.infer<typeof fieldDraftSchema>;
export const emptyFieldDraft: FieldDraft = {};
