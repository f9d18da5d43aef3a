import { z } from 'zod';
import { longestLogAsJson, runLogSchema } from '../../../alignment/run-log';
import { packUpSteps, type PackUpStep } from '../../../rehearsal/pack-up';
import { rehearsalStages, undoesTheRun, type RehearsalStage } from '../../../rehearsal/stages';
import {
  balanceDraftSchema,
  emptyBalanceDraft,
  type BalanceDraft,
} from '../balance/balance-submission';
import {
  clockAndPlaceDraftSchema,
  emptyClockAndPlaceDraft,
  type ClockAndPlaceDraft,
} from '../clock-and-place/clock-and-place-submission';
import { emptyFinderDraft, finderDraftSchema, type FinderDraft } from '../finder/finder-submission';
import { emptyLevelDraft, levelDraftSchema, type LevelDraft } from '../level/level-submission';
import { emptyPowerDraft, powerDraftSchema, type PowerDraft } from '../power/power-submission';
import {
  emptyPutItTogetherDraft,
  putItTogetherDraftSchema,
  type PutItTogetherDraft,
} from '../put-it-together/put-it-together-submission';

/** Each bench's own work. What one of them is short of is that stage's loss, and no more. */
type BenchWork = {
  'put-it-together': PutItTogetherDraft;
  level: LevelDraft;
  balance: BalanceDraft;
  finder: FinderDraft;
  power: PowerDraft;
  'clock-and-place': ClockAndPlaceDraft;
};

const benchWorkSchema: z.ZodType<BenchWork> = z.strictObject({
  'put-it-together': putItTogetherDraftSchema,
  level: levelDraftSchema,
  balance: balanceDraftSchema,
  finder: finderDraftSchema,
  power: powerDraftSchema,
  'clock-and-place': clockAndPlaceDraftSchema,
});

/** HIP numbers of the two stars that the alignment is planned on. */
const plannedStar = z.number().int().positive().nullable();

/** In the order in which they were done. */
const packUpStep: z.ZodType<PackUpStep> = z.enum([...packUpSteps]);

const work = {
  benches: benchWorkSchema,
  /** Both of them, once the tube lay at its start position. */
  clutchesLocked: z.boolean(),
  plannedPair: z.strictObject({ first: plannedStar, second: plannedStar }),
  /** From the start position to the judgement, on what the benches have left behind. */
  log: runLogSchema,
  packedUp: z.array(packUpStep).max(packUpSteps.length),
};

/** The evening as it was left in the end: each stage as it stood when it was handed in. Never a score. */
export const dressRehearsalSubmissionSchema = z.strictObject(work);
export type DressRehearsalSubmission = z.infer<typeof dressRehearsalSubmissionSchema>;

/** Work in progress: the same, and where the learner stands in it. */
export const dressRehearsalDraftSchema = z.strictObject({ ...work, at: z.enum(rehearsalStages) });
export type DressRehearsalDraft = z.infer<typeof dressRehearsalDraftSchema>;

export const emptyDressRehearsalDraft: DressRehearsalDraft = {
  at: 'put-it-together',
  benches: {
    'put-it-together': emptyPutItTogetherDraft,
    level: emptyLevelDraft,
    balance: emptyBalanceDraft,
    finder: emptyFinderDraft,
    power: emptyPowerDraft,
    'clock-and-place': emptyClockAndPlaceDraft,
  },
  clutchesLocked: false,
  plannedPair: { first: null, second: null },
  log: [],
  packedUp: [],
};

/** A log, and all that is done at the benches beside it. */
export const longestRehearsalAsJson = longestLogAsJson + 120_000;

/**
 * The work after something was done at a stage. Going back is free, as outdoors; but what stood on the
 * stage is gone: an alignment under way begins again, and the caller says so.
 */
export function workAfter(
  draft: DressRehearsalDraft,
  stage: RehearsalStage,
  change: Partial<Omit<DressRehearsalDraft, 'at'>>,
): { draft: DressRehearsalDraft; runBeginsAgain: boolean } {
  const runBeginsAgain = undoesTheRun(stage) && draft.log.length > 0;
  return {
    draft: { ...draft, ...change, ...(runBeginsAgain ? { log: [] } : {}) },
    runBeginsAgain,
  };
}
