import { z } from 'zod';
import { nakedEyePlanets } from '../sky/sky-frame';

export const skyObjectIdSchema = z.union([
  z.enum(nakedEyePlanets),
  z.templateLiteral(['hip-', z.number().int().positive()]),
]);

const chosenStarSchema = z.strictObject({
  hip: z.number().int().positive(),
  /** The neighbour the learner warns about, null for "nothing near it could be mistaken for it". */
  lookAlike: skyObjectIdSchema.nullable(),
});

/** What the learner did. Never a score. In 'partner' the given star comes first. */
export const pairSubmissionSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('pair'), stars: z.tuple([chosenStarSchema, chosenStarSchema]) }),
  z.strictObject({ kind: z.literal('none-usable') }),
]);
export type PairSubmission = z.infer<typeof pairSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const pairDraftSchema = z.strictObject({
  picks: z
    .array(
      z.strictObject({ hip: z.number().int().positive(), lookAlike: skyObjectIdSchema.nullable() }),
    )
    .max(2),
  saysNone: z.boolean(),
  /** How many of the mount's proposals have been turned down or kept so far. */
  proposalIndex: z.number().int().min(0).max(50).default(0),
});
export type PairDraft = z.infer<typeof pairDraftSchema>;
export const emptyPairDraft: PairDraft = { picks: [], saysNone: false, proposalIndex: 0 };

/** A submission that cannot be marked, and is not: nothing is used up. */
export type PairRefusal =
  | { code: 'same-star-twice' }
  | { code: 'not-in-this-sky'; hip: number }
  | { code: 'given-star-missing'; givenHip: number }
  | { code: 'not-proposed'; hip: number };
