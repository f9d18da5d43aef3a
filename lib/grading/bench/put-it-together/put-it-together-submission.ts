import { z } from 'zod';
import { sights } from '../../../assembly/hazards';
import { assemblySteps } from '../../../assembly/steps';

const order = z.array(z.enum(assemblySteps)).max(assemblySteps.length);
const marked = z.array(z.enum(sights)).max(sights.length);

/** What the learner did, in that order, and what was marked as dangerous. Never a score. */
export const putItTogetherSubmissionSchema = z.strictObject({
  order,
  hazards: z.strictObject({ unfolding: marked, lifting: marked, finishing: marked }),
});
export type PutItTogetherSubmission = z.infer<typeof putItTogetherSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. Null: not looked at yet. */
export const putItTogetherDraftSchema = z.strictObject({
  order,
  hazards: z.strictObject({
    unfolding: marked.nullable(),
    lifting: marked.nullable(),
    finishing: marked.nullable(),
  }),
});
export type PutItTogetherDraft = z.infer<typeof putItTogetherDraftSchema>;
export const emptyPutItTogetherDraft: PutItTogetherDraft = {
  order: [],
  hazards: { unfolding: null, lifting: null, finishing: null },
};
