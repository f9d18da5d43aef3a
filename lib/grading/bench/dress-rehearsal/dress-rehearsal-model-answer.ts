import { bestStars } from '../../../alignment/operator-stars';
import { perfectLog } from '../../../alignment/perfect-operator';
import { packUpSteps } from '../../../rehearsal/pack-up';
import type { StarCatalogue } from '../../../sky/catalogue';
import type { DressRehearsalVariant } from '../../../variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { balanceModelAnswer } from '../balance/balance-model-answer';
import { clockAndPlaceModelAnswer } from '../clock-and-place/clock-and-place-model-answer';
import type { DressRehearsalSubmission } from './dress-rehearsal-submission';
import { finderModelAnswer } from '../finder/finder-model-answer';
import { levelModelAnswer } from '../level/level-model-answer';
import { powerModelAnswer } from '../power/power-model-answer';
import { putItTogetherModelAnswer } from '../put-it-together/put-it-together-model-answer';
import { rehearsalRun } from './rehearsal-run';

/**
 * What an operator who makes no mistake hands in: every bench's own model answer, and a perfect run on
 * what they leave behind. Where the night has no pair of usable stars, all but the run.
 */
export function dressRehearsalModelAnswer({
  variant,
  catalogue,
}: {
  variant: DressRehearsalVariant;
  catalogue: StarCatalogue;
}): DressRehearsalSubmission {
  const { benches } = variant;
  const prepared = {
    benches: {
      'put-it-together': putItTogetherModelAnswer(benches['put-it-together']),
      level: levelModelAnswer(benches.level),
      balance: balanceModelAnswer(benches.balance),
      finder: finderModelAnswer(benches.finder),
      power: powerModelAnswer(benches.power),
      'clock-and-place': clockAndPlaceModelAnswer(benches['clock-and-place']),
    },
    clutchesLocked: true,
    plannedPair: { first: null, second: null },
    packedUp: [...packUpSteps],
  };
  const before = rehearsalRun(variant, prepared, catalogue);
  const stars = before.ok ? bestStars(before.input) : null;
  if (stars === null) return { ...prepared, log: [] };
  const planned = { ...prepared, plannedPair: { first: stars[0], second: stars[1] } };
  const run = rehearsalRun(variant, planned, catalogue);
  return { ...planned, log: run.ok ? perfectLog(run.input, stars) : [] };
}
