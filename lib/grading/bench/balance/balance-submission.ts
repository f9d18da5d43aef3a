import { z } from 'zod';
import type { BalanceAction } from '../../../balance/tube-bench';

const moves = z.enum(['front', 'back', 'holds']);

/** One thing done at the bench. Places are millimetres on the tape along the tube. */
const actionSchema: z.ZodType<BalanceAction> = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('foresee'), moves }),
  z.strictObject({ do: z.literal('hand'), on: z.boolean() }),
  z.strictObject({ do: z.literal('clamp'), open: z.boolean() }),
  z.strictObject({ do: z.literal('stop'), in: z.boolean() }),
  z.strictObject({ do: z.literal('slide'), toMm: z.number().min(-1000).max(3000) }),
  z.strictObject({ do: z.literal('tip'), toDeg: z.number().min(0).max(90) }),
  z.strictObject({ do: z.literal('part'), id: z.string().min(1).max(40), on: z.boolean() }),
  z.strictObject({ do: z.literal('pick-up') }),
]);

/** More than anybody does at one tube; the page stops here too. */
export const mostBalanceActions = 400;

/** What was done, in order, and the balance point as it was told where that is asked. Never a score. */
export const balanceSubmissionSchema = z.strictObject({
  actions: z.array(actionSchema).max(mostBalanceActions),
  readingMm: z.number().min(-1000).max(3000).nullable(),
});
export type BalanceSubmission = z.infer<typeof balanceSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes: what was done so far. */
export const balanceDraftSchema = z.strictObject(balanceSubmissionSchema.shape);
export type BalanceDraft = z.infer<typeof balanceDraftSchema>;
export const emptyBalanceDraft: BalanceDraft = { actions: [], readingMm: null };
