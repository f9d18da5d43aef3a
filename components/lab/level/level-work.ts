import type { LevelDraft, LevelSubmission } from '@/lib/grading/bench/level/level-submission';
import { legIndices, startOf, type TripodState } from '@/lib/levelling/tripod';
import { replay } from '@/lib/levelling/tripod-actions';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { legName } from './level-words';

/** As the work so far has left the tripod; work of another tripod shows it as it was found. */
export const stateOf = ({ actions }: LevelDraft, { site }: LevelVariant): TripodState =>
  replay(site, actions)?.at(-1) ?? startOf(site);

/** What has to be there before anybody can say how level it is. */
export function missingOf(draft: LevelDraft, variant: LevelVariant): string {
  if (replay(variant.site, draft.actions) === null)
    return 'start afresh: this work is of another tripod.';
  const state = stateOf(draft, variant);
  const open = legIndices.find((leg) => state.legs[leg].open);
  if (open !== undefined) return `lock leg ${legName(open)}.`;
  if (!state.tubeOn) return 'put the tube on, once the head is level.';
  if (state.held) return 'let the tripod carry the weight again.';
  if (answersOf(draft) === null) return 'answer the three questions on what a tilt does.';
  return '';
}

function answersOf({ answers }: LevelDraft): LevelSubmission['answers'] | null {
  const { firstSlew, afterTwoStars, takenAsLevel } = answers;
  return firstSlew === null || afterTwoStars === null || takenAsLevel === null
    ? null
    : { firstSlew, afterTwoStars, takenAsLevel };
}

export function submissionOf(draft: LevelDraft, variant: LevelVariant): LevelSubmission | null {
  const answers = answersOf(draft);
  return answers === null || missingOf(draft, variant) !== ''
    ? null
    : { actions: draft.actions, answers };
}
