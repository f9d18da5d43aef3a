import { mergedStarOf } from '../pointing/merged-stars';
import type { RunInput } from './run-input';
import type { RunRefusal, RunStage } from './run-state';

/** How far the run has come, beside where the telescope points. */
export type Progress = {
  stage: RunStage;
  /** Gone to last, in a stage that is about a star. */
  goneToHip: number | null;
  /** HIP numbers in the order of their confirming: none, one or two. */
  confirmedHips: readonly number[];
  /** Which of the proposals stands, counted from 0. */
  proposal: number;
};

export const firstProgress: Progress = {
  stage: 'start-position',
  goneToHip: null,
  confirmedHips: [],
  proposal: 0,
};

const nextStages: Partial<Record<RunStage, RunStage>> = {
  'choose-first': 'centre-first',
  'centre-first': 'centre-first',
  'choose-second': 'centre-second',
  'centre-second': 'centre-second',
  result: 'check-third',
  'check-third': 'check-third',
};

const isFirst = (stage: RunStage): boolean => stage === 'choose-first' || stage === 'centre-first';
const isSecond = (stage: RunStage): boolean =>
  stage === 'choose-second' || stage === 'centre-second';

/** The star that the mount proposes now; null where it does not, or not yet. */
export function proposedHip({ proposals, givenHip }: RunInput, progress: Progress): number | null {
  const { stage, proposal } = progress;
  const proposes = isSecond(stage) || (isFirst(stage) && givenHip === null);
  return proposes ? (proposals?.[proposal] ?? null) : null;
}

/** The star that the run is about. */
export const targetHip = (input: RunInput, progress: Progress): number | null =>
  progress.goneToHip ??
  proposedHip(input, progress) ??
  (isFirst(progress.stage) ? input.givenHip : null);

/** Whether the task lets the mount go to this star now; null when it does. */
export function goToRefusal(input: RunInput, progress: Progress, hip: number): RunRefusal | null {
  const { stage } = progress;
  if (nextStages[stage] === undefined) return { code: 'not-now' };
  const star = mergedStarOf(input.catalogue, hip);
  if (star === undefined) return { code: 'not-in-this-sky', hip };
  if (isSecond(stage) && progress.confirmedHips.some((one) => star.components.includes(one))) {
    return { code: 'same-star-twice' };
  }
  const asked =
    isFirst(stage) && input.givenHip !== null ? input.givenHip : proposedHip(input, progress);
  return asked !== null && asked !== hip ? { code: 'not-proposed', hip } : null;
}

export const afterGoTo = (progress: Progress, hip: number): Progress => ({
  ...progress,
  stage: nextStages[progress.stage] ?? progress.stage,
  goneToHip: hip,
});

/** "Another star": the next proposal, or another choice of one's own. */
export function afterAnotherStar(input: RunInput, progress: Progress): Progress | RunRefusal {
  const { stage, proposal } = progress;
  const proposes = proposedHip(input, progress) !== null;
  if (!isFirst(stage) && !isSecond(stage)) return { code: 'not-now' };
  // A star of one's own choice is turned down only once it was gone to.
  if (!proposes && progress.goneToHip === null) return { code: 'not-now' };
  if (isFirst(stage) && input.givenHip !== null) return { code: 'no-more-proposals' };
  const next = proposes ? followingProposal(input, progress, proposal + 1) : proposal;
  if (next === null) return { code: 'no-more-proposals' };
  return {
    ...progress,
    stage: isFirst(stage) ? 'choose-first' : 'choose-second',
    goneToHip: null,
    proposal: next,
  };
}

/** After "This is the star": on to the second, or to the result. */
export function afterConfirm(input: RunInput, progress: Progress, hip: number): Progress {
  const confirmedHips = [...progress.confirmedHips, hip];
  if (progress.stage === 'centre-second') {
    return { ...progress, stage: 'result', goneToHip: null, confirmedHips };
  }
  const proposedFirst = proposedHip(input, progress) !== null;
  const confirmed: Progress = {
    ...progress,
    stage: 'choose-second',
    goneToHip: null,
    confirmedHips,
  };
  // From the front again, those turned down included, rather than leave the learner without a star.
  const proposal =
    followingProposal(input, confirmed, proposedFirst ? progress.proposal + 1 : 0) ??
    followingProposal(input, confirmed, 0) ??
    Infinity;
  return { ...confirmed, proposal };
}

/** What was confirmed is dropped: by the learner, or by a computer that has forgotten it. */
export const afresh: Progress = { ...firstProgress, stage: 'choose-first' };

function followingProposal(
  { proposals }: RunInput,
  { confirmedHips }: Progress,
  from: number,
): number | null {
  const index = (proposals ?? []).findIndex((hip, i) => i >= from && !confirmedHips.includes(hip));
  return index < 0 ? null : index;
}
