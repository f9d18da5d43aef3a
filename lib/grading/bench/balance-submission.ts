import { z } from 'zod';

/** What the learner did. Never a score. */
export const balanceSubmissionSchema = z.strictObject({});
export type BalanceSubmission = z.infer<typeof balanceSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const balanceDraftSchema = z.strictObject({});
export type BalanceDraft = z.infer<typeof balanceDraftSchema>;
export const emptyBalanceDraft: BalanceDraft = {};
