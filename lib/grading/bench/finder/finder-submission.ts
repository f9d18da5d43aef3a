import { z } from 'zod';
import { companions, standingPlaces } from '../../../finder/day-hazard';
import { mostTurns, type SettingAction } from '../../../finder/setting';
import { mostActions } from '../../../finder/setting-record';

const azimuthDeg = z.number().min(0).lt(360);
const altitudeDeg = z.number().min(-10).max(85);
const eyepiece = z.enum(['low', 'high']);

const actionSchema: z.ZodType<SettingAction> = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('companion'), who: z.enum(companions) }),
  z.strictObject({ do: z.literal('stand'), where: z.enum(standingPlaces) }),
  z.strictObject({ do: z.literal('choose'), target: z.string().max(40) }),
  z.strictObject({ do: z.literal('caps'), on: z.boolean() }),
  z.strictObject({ do: z.literal('move'), azimuthDeg, altitudeDeg }),
  z.strictObject({ do: z.literal('eyepiece'), which: eyepiece }),
  z.strictObject({
    do: z.literal('turn'),
    screw: z.literal([0, 1]),
    toTurns: z.number().min(-mostTurns).max(mostTurns),
  }),
  z.strictObject({ do: z.literal('lock'), on: z.boolean() }),
  z.strictObject({ do: z.literal('wait') }),
]);

/** What is asked in some kinds of task only; null where it is not, or not answered yet. */
const answersSchema = z.strictObject({
  /** How far beside the middle, arcminutes. */
  offArcmin: z.number().min(0).max(600).nullable(),
  /** Towards which hour of a clock's face, as the eyepiece shows it. */
  towardsHour: z.int().min(1).max(12).nullable(),
  inLow: z.boolean().nullable(),
  inHigh: z.boolean().nullable(),
  /** What the finder had been set on, metres away. */
  setOnM: z.number().positive().max(10_000).nullable(),
});
export type FinderAnswers = z.infer<typeof answersSchema>;

const actions = z.array(actionSchema).max(mostActions);

/** What the learner did, in order, and answered. Never a score. */
export const finderSubmissionSchema = z.strictObject({
  actions: actions.min(1),
  answers: answersSchema,
});
export type FinderSubmission = {
  readonly actions: readonly SettingAction[];
  readonly answers: FinderAnswers;
};

/** Work in progress, kept so that an interrupted attempt resumes. */
export const finderDraftSchema = z.strictObject({ actions, answers: answersSchema });
export type FinderDraft = FinderSubmission;
export const emptyFinderDraft: FinderDraft = {
  actions: [],
  answers: { offArcmin: null, towardsHour: null, inLow: null, inHigh: null, setOnM: null },
};
