import { z } from 'zod';

/** What the learner did. Never a score. */
export const powerSubmissionSchema = z.strictObject({});
export type PowerSubmission = z.infer<typeof powerSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const powerDraftSchema = z.strictObject({});
export type PowerDraft = z.infer<typeof powerDraftSchema>;
export const emptyPowerDraft: PowerDraft = {};
