import { z } from 'zod';

/** What the learner did. Never a score. */
export const levelSubmissionSchema = z.strictObject({});
export type LevelSubmission = z.infer<typeof levelSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const levelDraftSchema = z.strictObject({});
export type LevelDraft = z.infer<typeof levelDraftSchema>;
export const emptyLevelDraft: LevelDraft = {};
