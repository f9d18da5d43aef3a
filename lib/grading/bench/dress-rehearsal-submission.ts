import { z } from 'zod';

/** What the learner did. Never a score. */
export const dressRehearsalSubmissionSchema = z.strictObject({});
export type DressRehearsalSubmission = z.infer<typeof dressRehearsalSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const dressRehearsalDraftSchema = z.strictObject({});
export type DressRehearsalDraft = z.infer<typeof dressRehearsalDraftSchema>;
export const emptyDressRehearsalDraft: DressRehearsalDraft = {};
