import { z } from 'zod';
import type { TripodAction } from '../../../levelling/tripod-actions';

const leg = z.union([z.literal(0), z.literal(1), z.literal(2)]);

/** More than anybody does; whoever got lost starts afresh. */
export const mostLevelActions = 400;

const actionSchema: z.ZodType<TripodAction> = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('tread-in'), leg }),
  z.strictObject({ do: z.literal('open'), leg }),
  z.strictObject({ do: z.literal('slide'), leg, toMm: z.int().min(0).max(5000) }),
  z.strictObject({ do: z.literal('lock'), leg }),
  z.strictObject({ do: z.literal('turn-arm') }),
  z.strictObject({ do: z.literal('tube-on') }),
  z.strictObject({ do: z.literal('tube-off') }),
  z.strictObject({ do: z.literal('hold') }),
  z.strictObject({ do: z.literal('let-go') }),
]);
const actions = z.array(actionSchema).max(mostLevelActions);

/** Which of the answers offered was chosen, counted from nought. */
const option = z.int().min(0).max(9);

/** What the learner did with feet, locks, legs and tube, and what they made of the tilt. Never a score. */
export const levelSubmissionSchema = z.strictObject({
  actions,
  answers: z.strictObject({ firstSlew: option, afterTwoStars: option, takenAsLevel: option }),
});
export type LevelSubmission = z.infer<typeof levelSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const levelDraftSchema = z.strictObject({
  actions,
  answers: z.strictObject({
    firstSlew: option.nullable(),
    afterTwoStars: option.nullable(),
    takenAsLevel: option.nullable(),
  }),
});
export type LevelDraft = z.infer<typeof levelDraftSchema>;
export const emptyLevelDraft: LevelDraft = {
  actions: [],
  answers: { firstSlew: null, afterTwoStars: null, takenAsLevel: null },
};
