import { z } from 'zod';
import { bayCount, bayEnds } from '../../../power/holder';
import { powerPlans } from '../../../power/night';
import type { PowerAction } from '../../../power/power-bench';
import { supplyVerdicts } from '../../../power/supply';

const tag = z.string().min(1).max(8);
const bay = z
  .int()
  .min(0)
  .max(bayCount - 1);
const stud = z.int().min(0).max(bayCount);

const powerActionSchema: z.ZodType<PowerAction> = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('put'), cell: tag, bay, plusEnd: z.enum(bayEnds) }),
  z.strictObject({ do: z.literal('take'), bay }),
  z.strictObject({ do: z.literal('turn'), bay }),
  z.strictObject({ do: z.literal('plug'), supply: tag }),
  z.strictObject({ do: z.literal('unplug') }),
  z.strictObject({ do: z.literal('hand-control'), connected: z.boolean() }),
  z.strictObject({ do: z.literal('switch'), on: z.boolean() }),
  z.strictObject({ do: z.literal('slew') }),
  z.strictObject({ do: z.literal('read'), red: stud, black: stud }),
]);

/** Five times what the longest task needs, and within what is kept of one attempt. */
export const mostPowerActions = 140;

/** The most that the fields take: far beyond any answer. */
export const powerLimits = { milliamperes: 5000, hours: 200, volts: 20 };

const work = {
  actions: z.array(powerActionSchema).max(mostPowerActions),
  /** How many cells were the wrong way round. */
  reversedCount: z.int().min(0).max(bayCount).nullable(),
  /** What is to be said of each supply, by its letter. */
  verdicts: z.partialRecord(tag, z.enum(supplyVerdicts)),
  meanMilliamperes: z.number().min(0).max(powerLimits.milliamperes).nullable(),
  runTimeHours: z.number().min(0).max(powerLimits.hours).nullable(),
  slewingVolts: z.number().min(0).max(powerLimits.volts).nullable(),
  resets: z.boolean().nullable(),
  plan: z.enum(powerPlans).nullable(),
};

/** What the learner did at the bench, in order, and what was answered beside it. Never a score. */
export const powerSubmissionSchema = z.strictObject(work);
export type PowerSubmission = z.infer<typeof powerSubmissionSchema>;

/** Work in progress has the same parts: what a task does not ask stays empty in its answer too. */
export const powerDraftSchema = z.strictObject(work);
export type PowerDraft = PowerSubmission;
export const emptyPowerDraft: PowerDraft = {
  actions: [],
  reversedCount: null,
  verdicts: {},
  meanMilliamperes: null,
  runTimeHours: null,
  slewingVolts: null,
  resets: null,
  plan: null,
};
