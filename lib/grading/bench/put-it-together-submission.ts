import { z } from 'zod';

/** What the learner did. Never a score. */
export const putItTogetherSubmissionSchema = z.strictObject({});
export type PutItTogetherSubmission = z.infer<typeof putItTogetherSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const putItTogetherDraftSchema = z.strictObject({});
export type PutItTogetherDraft = z.infer<typeof putItTogetherDraftSchema>;
export const emptyPutItTogetherDraft: PutItTogetherDraft = {};
