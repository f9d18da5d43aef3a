import { z } from 'zod';

/** What the learner did. Never a score. */
export const clockAndPlaceSubmissionSchema = z.strictObject({});
export type ClockAndPlaceSubmission = z.infer<typeof clockAndPlaceSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const clockAndPlaceDraftSchema = z.strictObject({});
export type ClockAndPlaceDraft = z.infer<typeof clockAndPlaceDraftSchema>;
export const emptyClockAndPlaceDraft: ClockAndPlaceDraft = {};
