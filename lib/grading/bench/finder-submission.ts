import { z } from 'zod';

/** What the learner did. Never a score. */
export const finderSubmissionSchema = z.strictObject({});
export type FinderSubmission = z.infer<typeof finderSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const finderDraftSchema = z.strictObject({});
export type FinderDraft = z.infer<typeof finderDraftSchema>;
export const emptyFinderDraft: FinderDraft = {};
