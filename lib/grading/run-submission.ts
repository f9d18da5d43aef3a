import { z } from 'zod';
import { runLogSchema } from '../alignment/run-log';
import type { RunRefusal } from '../alignment/run-state';

/** What the learner did, from the start position to the judgement. Never a score. */
export const runSubmissionSchema = z.strictObject({ log: runLogSchema });
export type RunSubmission = z.infer<typeof runSubmissionSchema>;

/** Work in progress is the log so far: replaying it brings the run back to where it was. */
export const runDraftSchema = z.strictObject({ log: runLogSchema });
export type RunDraft = RunSubmission;
export const emptyRunDraft: RunDraft = { log: [] };

/** A log that cannot be marked, and is not: nothing is used up. */
export type RunSubmissionRefusal =
  { code: 'does-not-add-up'; action: number; why: RunRefusal['code'] } | { code: 'not-finished' };
