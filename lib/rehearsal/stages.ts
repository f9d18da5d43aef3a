/** The stages of a dress rehearsal, in the order of an evening. */
export const rehearsalStages = [
  'put-it-together',
  'level',
  'balance',
  'finder',
  'power',
  'clock-and-place',
  'start-position',
  'pick-the-pair',
  'alignment-run',
  'check-on-a-third',
  'pack-up',
] as const;
export type RehearsalStage = (typeof rehearsalStages)[number];

/** Those at a bench of their own: what they leave is carried into everything that follows. */
export const benchStages = [
  'put-it-together',
  'level',
  'balance',
  'finder',
  'power',
  'clock-and-place',
] as const satisfies readonly RehearsalStage[];
export type BenchStage = (typeof benchStages)[number];

/** What is steered on the one simulator, and stands in one log. */
const steered: ReadonlySet<RehearsalStage> = new Set([
  'start-position',
  'alignment-run',
  'check-on-a-third',
]);

/**
 * Whether something done at a stage makes an alignment begin again that is under way. The learner may go
 * back at any time, as outdoors; but whoever turns a leg, slides the tube, types another hour or looses a
 * clutch has no alignment any more. What is packed up afterwards touches none.
 */
export const undoesTheRun = (stage: RehearsalStage): boolean =>
  stage !== 'pack-up' && !steered.has(stage);
