import { z } from 'zod';
import { rehearsalStages, type RehearsalStage } from '../rehearsal/stages';
import type { Lab } from '../variants/labs';

/** How far open work has come, as its last saved draft shows it. */
export type LiveStage =
  | { kind: 'stage'; stage: RehearsalStage }
  | { kind: 'answered' | 'picked' | 'looked-at' | 'confirmed' | 'done'; count: number };

const anyList = z.array(z.unknown());
const drafts = {
  'dress-rehearsal': z
    .object({ at: z.enum(rehearsalStages) })
    .transform(({ at }): LiveStage => ({ kind: 'stage', stage: at })),
  'lesson-questions': z.object({ answers: anyList }).transform(({ answers }): LiveStage => ({
    kind: 'answered',
    count: answers.filter((answer) => answer !== null).length,
  })),
  'pick-the-pair': z
    .object({ picks: anyList })
    .transform(({ picks }): LiveStage => ({ kind: 'picked', count: picks.length })),
  'what-went-wrong': z
    .object({ looked: anyList })
    .transform(({ looked }): LiveStage => ({ kind: 'looked-at', count: looked.length })),
  'alignment-run': z
    .object({ log: z.array(z.object({ do: z.string() })) })
    .transform(({ log }): LiveStage => ({ kind: 'confirmed', count: confirmedIn(log) })),
  'put-it-together': z
    .object({ order: anyList })
    .transform(({ order }): LiveStage => ({ kind: 'done', count: order.length })),
} satisfies Partial<Record<Lab, z.ZodType<LiveStage>>>;

/** The benches that keep what was done as a list of actions. */
const actionsDraft = z
  .object({ actions: anyList })
  .transform(({ actions }): LiveStage => ({ kind: 'done', count: actions.length }));

/** Giving up what was confirmed begins the count again. */
function confirmedIn(log: readonly { do: string }[]): number {
  const from = log.findLastIndex((action) => action.do === 'start-again') + 1;
  return log.slice(from).filter((action) => action.do === 'this-is-the-star').length;
}

const isKnown = (lab: Lab): lab is keyof typeof drafts => lab in drafts;

/** Null where a lab has no stages to tell of, as at a bench with a form alone. */
export const stageOfDraft = (lab: Lab, draft: unknown): LiveStage | null =>
  (isKnown(lab) ? drafts[lab] : actionsDraft).safeParse(draft).data ?? null;
