import { hazardsAtEnd } from '../../../finder/setting';
import type { FinderVariant } from '../../../variants/bench/finder/finder-variant';
import type { BenchGrading, BenchRefusal } from '../bench-result';
import { finderCriterionMarks } from './finder-criteria';
import { finderSights } from './finder-sights';
import { replayOf } from './finder-replay';
import type { FinderResult } from './finder-result';
import { finderSlips } from './finder-slips';
import type { FinderAnswers, FinderSubmission } from './finder-submission';
import { totalOf } from '../../total-of';

/** Goes up whenever the same submission could earn other marks. */
export const finderGraderVersion = 1;

/** Marks a setting from what was done: the screws, the tube and every way it took, done again. */
export function gradeFinder({
  variant,
  submission,
}: {
  variant: FinderVariant;
  submission: FinderSubmission;
}): BenchGrading<FinderResult> {
  const { actions, answers } = submission;
  const replay = replayOf(variant, actions);
  if (replay === null) {
    return refused('does-not-add-up', 'What was sent cannot have been done with this finder.');
  }
  const { state, ways } = replay;
  const sights = finderSights(variant, state);
  if (!state.locked || sights === null) {
    return refused('not-locked', 'The screws are not locked on a target yet.');
  }
  if (!answered(variant, answers)) {
    return refused('not-answered', 'A question of this task is not answered yet.');
  }
  const criteria = finderCriterionMarks({ variant, state, sights, answers });
  const { target, dot, offCentre, shares, starInEyepiece } = sights;
  return {
    ok: true,
    result: {
      lab: 'finder',
      graderVersion: finderGraderVersion,
      template: variant.template,
      total: totalOf(criteria),
      criteria,
      gates: hazardsAtEnd(state),
      slips: finderSlips({ variant, state, sights, answers }),
      target: { id: target.id, name: target.name, distanceM: target.distanceM },
      dot,
      shares,
      offCentre,
      starInEyepiece,
      ways,
    },
  };
}

const refused = (code: string, message: string): { ok: false; refusal: BenchRefusal } => ({
  ok: false,
  refusal: { code, message },
});

/** Whether every question of the task has its answer. */
export function answered({ template }: FinderVariant, answers: FinderAnswers): boolean {
  const { offArcmin, towardsHour, inLow, inHigh, setOnM } = answers;
  if (template === 'near-then-predict') {
    return offArcmin !== null && towardsHour !== null && inLow !== null && inHigh !== null;
  }
  return template !== 'set-by-another' || (offArcmin !== null && setOnM !== null);
}
