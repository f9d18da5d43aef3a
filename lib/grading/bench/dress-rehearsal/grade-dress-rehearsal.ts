import type { AnswerKey } from '../../../pointing/answer-key';
import { storedAnswerKey } from '../../../pointing/stored-answer-key';
import { packedUp, type PackedUp } from '../../../rehearsal/pack-up';
import { benchStages } from '../../../rehearsal/stages';
import type { StarCatalogue } from '../../../sky/catalogue';
import type { DressRehearsalVariant } from '../../../variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { gradeRun } from '../../grade-run';
import { judgePair } from '../../run-pair';
import type { RunResult } from '../../run-result';
import type { BenchGrading, BenchRefusal } from '../bench-result';
import {
  dressRehearsalCriteria,
  type DressRehearsalCriterion,
  type DressRehearsalGate,
  type DressRehearsalResult,
} from './dress-rehearsal-result';
import type { DressRehearsalSubmission } from './dress-rehearsal-submission';
import { benchResults } from './rehearsal-benches';
import { benchGates } from './rehearsal-gates';
import { handedOnBy } from './rehearsal-handed-on';
import { rehearsalMisses } from './rehearsal-misses';
import { rehearsalRun, runBeforeSetUp, type RehearsalRun } from './rehearsal-run';
import { skillsShown } from './rehearsal-skills';
import { rehearsalSlips } from './rehearsal-slips';
import { totalOf } from '../../total-of';

/** Goes up whenever the same submission could earn other marks. */
export const dressRehearsalGraderVersion = 1;

// What each stage is worth. Ours, without a source: half of it is done before a star is seen.
const possible: Readonly<Record<DressRehearsalCriterion, number>> = {
  'put-it-together': 9,
  level: 9,
  balance: 9,
  finder: 9,
  power: 9,
  'clock-and-place': 9,
  'pick-the-pair': 6,
  'alignment-run': 30,
  'pack-up': 10,
};

/** From here on an evening was done well enough, if no gate failed. Design, "Marks". */
const enoughMarks = 70;

type Work = {
  variant: DressRehearsalVariant;
  submission: DressRehearsalSubmission;
  catalogue: StarCatalogue;
};

/**
 * Marks a whole evening: every bench by its own lab, the alignment run on the telescope as they have left
 * it, and how it was packed up; and traces each star that was missed to what moved it. Work that a
 * stage's lab would refuse is that stage's loss; a run that its own moves do not lead to is refused.
 */
export function gradeDressRehearsal({
  variant,
  submission,
  catalogue,
}: Work): BenchGrading<DressRehearsalResult> {
  const { frame, scenario, benches: tasks, telescope } = variant;
  const { log } = submission;
  const chosen = choiceOf(submission);
  const rehearsal = rehearsalRun(variant, submission, catalogue);
  const answerKey =
    chosen === null && log.length === 0
      ? null
      : storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue });
  const graded = gradedRun(rehearsal, { answerKey, submission, catalogue });
  if (!graded.ok) return graded;
  const { run } = graded;

  const benches = benchResults(tasks, submission.benches);
  const pair =
    chosen &&
    answerKey &&
    judgePair({ variant: runBeforeSetUp(variant), answerKey, catalogue }, chosen);
  const packed = packedUp(submission.packedUp);
  const shares: Readonly<Record<DressRehearsalCriterion, number | null>> = {
    ...sharesOf(benches),
    'pick-the-pair': pair && (pair.share ?? 1),
    'alignment-run': run && run.total / 100,
    'pack-up': submission.packedUp.length === 0 ? null : packed.share,
  };
  const criteria = dressRehearsalCriteria.map((id) => ({
    id,
    possible: possible[id],
    earned: possible[id] * (shares[id] ?? 0),
  }));
  const gates = gatesOf(benchGates(tasks, submission.benches), run, packed);
  const total = totalOf(criteria);
  const { power } = handedOnBy(variant, submission);
  return {
    ok: true,
    result: {
      lab: 'dress-rehearsal',
      graderVersion: dressRehearsalGraderVersion,
      template: variant.template,
      total,
      criteria,
      gates,
      benches,
      run,
      power,
      slips: rehearsalSlips({
        criteria,
        shares,
        benches,
        run,
        pair,
        packed,
        power,
        notReady: rehearsal.ok ? null : rehearsal.reason,
      }),
      misses: rehearsal.ok
        ? rehearsalMisses(rehearsal.input, log, { slips: rehearsal.slips, telescope })
        : [],
      skills: skillsShown({ shares, gates, run }),
      readyForTheField: gates.length === 0 && total >= enoughMarks,
    },
  };
}

/** Null while no alignment was judged. */
function gradedRun(
  rehearsal: RehearsalRun,
  {
    answerKey,
    submission: { log },
    catalogue,
  }: Pick<Work, 'submission' | 'catalogue'> & { answerKey: AnswerKey | null },
): { ok: true; run: RunResult | null } | typeof refused {
  if (log.length === 0 || answerKey === null) return { ok: true, run: null };
  if (!rehearsal.ok) return refused;
  const grading = gradeRun({
    variant: rehearsal.variant,
    answerKey,
    catalogue,
    submission: { log },
  });
  if (grading.ok) return { ok: true, run: grading.result };
  return grading.refusal.code === 'not-finished' ? { ok: true, run: null } : refused;
}

const refused: { ok: false; refusal: BenchRefusal } = {
  ok: false,
  refusal: {
    code: 'does-not-add-up',
    message:
      'This alignment run does not add up: what it says was read is not where its own moves lead.',
  },
};

/** Null while no pair is planned. */
function choiceOf({
  plannedPair: { first, second },
}: DressRehearsalSubmission): readonly [number, number] | null {
  return first === null || second === null || first === second ? null : [first, second];
}

const sharesOf = (benches: DressRehearsalResult['benches']) => {
  const share = (stage: keyof typeof benches): number | null => {
    const result = benches[stage];
    return result && result.total / 100;
  };
  return {
    'put-it-together': share('put-it-together'),
    level: share('level'),
    balance: share('balance'),
    finder: share('finder'),
    power: share('power'),
    'clock-and-place': share('clock-and-place'),
  };
};

function gatesOf(
  benches: ReturnType<typeof benchGates>,
  run: RunResult | null,
  { broken }: PackedUp,
): DressRehearsalGate[] {
  const dangers = broken.filter(({ danger }) => danger);
  return [
    ...benchStages.flatMap((stage) => benches[stage].map((gate) => ({ id: stage, gate }))),
    ...(run?.gates ?? []).map(({ id }) => ({ id: 'alignment-run' as const, gate: id })),
    ...dangers.map(({ after }) => ({ id: 'pack-up' as const, gate: after })),
  ];
}
