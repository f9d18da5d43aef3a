import { z } from 'zod';
import { cureIds, faultIds } from '../faults/fault-ids';
import { looks } from '../variants/fault-variant';

const hip = z.number().int().positive();

/** What the learner looked at, tried and concluded. Never a score. */
export const faultSubmissionSchema = z.strictObject({
  /** Beyond what was open, in the order they were asked for. */
  looked: z.array(z.enum(looks)).max(looks.length),
  testSlew: hip.nullable(),
  fault: z.enum(faultIds),
  cure: z.enum(cureIds),
});
export type FaultSubmission = z.infer<typeof faultSubmissionSchema>;

export const faultDraftSchema = faultSubmissionSchema.extend({
  fault: z.enum(faultIds).nullable(),
  cure: z.enum(cureIds).nullable(),
});
export type FaultDraft = z.infer<typeof faultDraftSchema>;
export const emptyFaultDraft: FaultDraft = { looked: [], testSlew: null, fault: null, cure: null };

/** A question to the evening as the browser sends it. */
export const faultAskSchema = z.union([z.enum(looks), z.strictObject({ testSlew: hip })]);

export type FaultRefusal = { code: 'not-offered' };
