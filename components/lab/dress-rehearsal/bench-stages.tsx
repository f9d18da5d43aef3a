'use client';

import type { DressRehearsalDraft } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import type { BenchStage as BenchStageId } from '@/lib/rehearsal/stages';
import { balanceParts } from '../balance/balance-parts';
import { clockAndPlaceParts } from '../clock-and-place/clock-and-place-parts';
import { finderParts } from '../finder/finder-parts';
import { levelParts } from '../level/level-parts';
import { powerParts } from '../power/power-parts';
import { putItTogetherParts } from '../put-it-together/put-it-together-parts';
import { BenchStage } from './bench-stage';
import type { Evening } from './evening';

/** Whichever bench the learner stands at. */
export function BenchStages({ evening, stage }: { evening: Evening; stage: BenchStageId }) {
  const tasks = evening.variant.benches;
  const drafts = evening.draft.benches;
  const at = <Id extends BenchStageId>(id: Id) => ({
    evening,
    stage: id,
    variant: tasks[id],
    start: drafts[id],
    onChange: (draft: DressRehearsalDraft['benches'][Id]) => {
      evening.work(id, { benches: { ...drafts, [id]: draft } });
    },
  });
  switch (stage) {
    case 'put-it-together':
      return <BenchStage key={stage} parts={putItTogetherParts} {...at(stage)} />;
    case 'level':
      return <BenchStage key={stage} parts={levelParts} {...at(stage)} />;
    case 'balance':
      return <BenchStage key={stage} parts={balanceParts} {...at(stage)} />;
    case 'finder':
      return <BenchStage key={stage} parts={finderParts} {...at(stage)} />;
    case 'power':
      return <BenchStage key={stage} parts={powerParts} {...at(stage)} />;
    case 'clock-and-place':
      return <BenchStage key={stage} parts={clockAndPlaceParts} {...at(stage)} />;
  }
}
