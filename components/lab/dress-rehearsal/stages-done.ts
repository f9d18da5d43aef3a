import type { DressRehearsalDraft } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import { packUpSteps } from '@/lib/rehearsal/pack-up';
import type { RehearsalStage } from '@/lib/rehearsal/stages';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { missingAtBench } from './bench-work';
import { benchStages } from '@/lib/rehearsal/stages';

/** What is still to be done at a stage, in a few words; empty when it is finished. Never whether it is right. */
export function stillToDo(
  draft: DressRehearsalDraft,
  variant: DressRehearsalVariant,
  stage: RehearsalStage,
): string {
  const bench = benchStages.find((one) => one === stage);
  if (bench !== undefined) return missingAtBench(draft, variant, bench);
  const { log, plannedPair, packedUp } = draft;
  switch (stage) {
    case 'start-position':
      if (!log.some((action) => action.do === 'set-start')) return 'set the start position.';
      return draft.clutchesLocked ? '' : 'lock the clutches.';
    case 'pick-the-pair': {
      const { first, second } = plannedPair;
      return first === null || second === null || first === second ? 'plan two stars.' : '';
    }
    case 'alignment-run':
      return log.filter((action) => action.do === 'this-is-the-star').length < 2
        ? 'confirm two stars.'
        : '';
    case 'check-on-a-third':
      return log.some((action) => action.do === 'judge') ? '' : 'say whether you would trust it.';
    case 'pack-up':
      return packedUp.length === packUpSteps.length ? '' : 'put everything away.';
    default:
      return '';
  }
}
