import { replayRun } from '../alignment/alignment-run';
import { perfectOutcome, worthOfAlignment } from '../alignment/alignment-worth';
import { deservedJudgement } from '../alignment/deserved-judgement';
import type { Run } from '../alignment/run';
import type { RunInput } from '../alignment/run-input';
import { leastSunDistance, nearestToSunDeg } from '../alignment/sun-distance';
import type { AnswerKey } from '../pointing/answer-key';
import type { StarCatalogue } from '../sky/catalogue';
import { wrap180 } from '../units/angle';
import type { RunVariant } from '../variants/run-variant';
import { runAdvice } from './run-advice';
import { runCriteria } from './run-criteria';
import { judgePair } from './run-pair';
import type { AchievedCell, RunResult } from './run-result';
import { judgeStars, type JudgedStar } from './run-stars';
import type { RunSubmission, RunSubmissionRefusal } from './run-submission';
import { judgeThird } from './run-third';
import { totalOf } from './total-of';

/** Goes up whenever the same submission could earn other marks. */
export const runGraderVersion = 1;

export type RunGrading =
  { ok: true; result: RunResult } | { ok: false; refusal: RunSubmissionRefusal };

/**
 * Marks one alignment run by doing it again from its log, on the stored variant and answer key alone:
 * what each confirm really had in the eyepiece and how well, what the alignment is worth, and whether it
 * was judged rightly. Rules and marks: design, "Alignment run". A log that does not lead to the readings
 * it claims is refused. Never throws on a submission that its schema lets through.
 */
export function gradeRun({
  variant,
  answerKey,
  submission,
  catalogue,
}: {
  variant: RunVariant;
  answerKey: AnswerKey;
  submission: RunSubmission;
  catalogue: StarCatalogue;
}): RunGrading {
  const judge = submission.log.at(-1);
  if (judge?.do !== 'judge') return { ok: false, refusal: { code: 'not-finished' } };
  const input: RunInput = { ...variant, catalogue };
  const replay = replayRun(input, submission.log);
  if (!replay.ok) {
    const { action, refusal } = replay;
    return { ok: false, refusal: { code: 'does-not-add-up', action, why: refusal.code } };
  }
  const { run } = replay;
  const [first, second] = judgeStars(run);
  if (run.start === null || first === undefined || second === undefined) {
    throw new Error('a run was judged before its two stars were confirmed');
  }

  const stars = [first, second] as const;
  const worth = worthOf(run);
  const judgement = { trusted: judge.trust, deserved: worth.deserved };
  const start = {
    azimuthErrorDeg: wrap180(run.start.azimuthDeg),
    altitudeErrorDeg: run.start.altitudeDeg,
    declinationDeg: variant.setup.declinationDeg,
  };
  const pair = judgePair({ variant, answerKey, catalogue }, [
    first.found.meant.hip,
    second.found.meant.hip,
  ]);
  const minutes = run.lastMs / 60_000;
  const { minutesAllowed } = variant;
  const criteria = runCriteria({
    start,
    stars,
    pairShare: pair.share,
    judgement,
    minutes,
    minutesAllowed,
  });
  const result: Omit<RunResult, 'advice'> = {
    lab: 'alignment-run',
    graderVersion: runGraderVersion,
    template: variant.template,
    total: totalOf(criteria),
    criteria,
    gates: sunGate(run),
    start,
    stars: stars.map(({ shown }: JudgedStar) => shown),
    outcome: run.outcome,
    pair: pair.figures,
    achievedHitRate: worth.achievedHitRate,
    perfectHitRate: worth.perfectHitRate,
    achieved: worth.cells,
    third: judgeThird(input, submission.log),
    judgement,
    minutes,
  };
  return { ok: true, result: { ...result, advice: runAdvice(result, stars, minutesAllowed) } };
}

/** What the alignment is worth, and what dead centring of the same stars at the same times had given. */
function worthOf({ input, outcome, confirms, motion: { truth } }: Run): {
  achievedHitRate: number | null;
  perfectHitRate: number | null;
  deserved: 'trust' | 'doubt' | 'either';
  cells: AchievedCell[];
} {
  const achieved = outcome && worthOfAlignment(input, outcome, truth);
  const [first, second] = confirms;
  const ideal = first && second && perfectOutcome(input, [first, second], truth);
  const perfectHitRate = (ideal && worthOfAlignment(input, ideal, truth)?.hitRate) ?? null;
  const achievedHitRate = achieved?.hitRate ?? null;
  return {
    achievedHitRate,
    perfectHitRate,
    deserved: deservedJudgement(achievedHitRate, perfectHitRate ?? 1),
    cells: (achieved?.cells ?? []).map(({ azimuthDeg, altitudeDeg, errorArcmin }) => ({
      azimuthDeg: rounded(azimuthDeg),
      altitudeDeg: rounded(altitudeDeg),
      errorArcmin: rounded(errorArcmin),
    })),
  };
}

const rounded = (value: number): number => Math.round(value * 100) / 100;

function sunGate(run: Run): RunResult['gates'] {
  const nearest = leastSunDistance(run);
  if (nearest === null || nearest.distanceDeg >= nearestToSunDeg) return [];
  const { atMs, distanceDeg } = nearest;
  return [{ id: 'sun', atMs, distanceDeg }];
}
