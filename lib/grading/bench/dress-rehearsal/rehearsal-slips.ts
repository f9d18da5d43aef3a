import type { NotReady } from '../../../rehearsal/handed-on';
import type { PackedUp } from '../../../rehearsal/pack-up';
import { benchStages } from '../../../rehearsal/stages';
import type { JudgedPair } from '../../run-pair';
import type { RunResult } from '../../run-result';
import type { BenchCriterion } from '../bench-result';
import type {
  BenchResults,
  DressRehearsalCriterion,
  DressRehearsalResult,
  DressRehearsalSlip,
} from './dress-rehearsal-result';

/** Less than this lost of a stage is not worth a sentence. */
const smallLoss = 0.3;

type Judged = {
  criteria: readonly BenchCriterion<DressRehearsalCriterion>[];
  shares: Readonly<Record<DressRehearsalCriterion, number | null>>;
  benches: BenchResults;
  run: RunResult | null;
  pair: JudgedPair | null;
  packed: PackedUp;
  power: DressRehearsalResult['power'];
  notReady: NotReady | null;
};

/** One thing for each stage that lost something: what cost most there; the dearest stage first. */
export function rehearsalSlips(judged: Judged): DressRehearsalSlip[] {
  const lasting = doesNotLast(judged);
  return [...judged.criteria.flatMap((criterion) => slipsOf(criterion, judged)), ...lasting].sort(
    (a, b) => b.lostMarks - a.lostMarks,
  );
}

function slipsOf(
  { id: stage, earned, possible }: BenchCriterion<DressRehearsalCriterion>,
  { shares, benches, run, pair, packed, notReady }: Judged,
): DressRehearsalSlip[] {
  const lostMarks = possible - earned;
  if (lostMarks < smallLoss) return [];
  if (stage === 'alignment-run') {
    if (run !== null) return [{ code: 'alignment-run', advice: run.advice.code, lostMarks }];
    if (notReady !== null) return [{ code: 'not-ready', reason: notReady, lostMarks }];
  }
  if (shares[stage] === null) return [{ code: 'not-done', stage, lostMarks }];
  if (stage === 'pack-up') {
    const { broken, missing } = packed;
    return [{ code: 'packed-up', broken, missing, lostMarks }];
  }
  if (stage === 'pick-the-pair') {
    const { chosen, best } = pair?.figures ?? { chosen: null, best: null };
    const figures = { hitRate: chosen?.hitRate ?? 0, bestHitRate: best?.hitRate ?? 0 };
    return [{ code: 'planned-pair', ...figures, lostMarks }];
  }
  const bench = benchStages.find((one) => one === stage);
  const first: string | undefined = bench && benches[bench]?.slips[0]?.code;
  return bench === undefined || first === undefined
    ? []
    : [{ code: 'bench', stage: bench, first, lostMarks }];
}

/** After the third star the evening goes on: a supply that ends it early costs no marks here. */
function doesNotLast({ power }: Judged): DressRehearsalSlip[] {
  return power === null || power.resetsAtSlew === null
    ? []
    : [{ code: 'does-not-last', ...power, lostMarks: 0 }];
}
