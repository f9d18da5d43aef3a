import { withoutNoise } from '../grading/counted-mark';
import { criteriaOf, gateFailedIn, type CriterionMark } from '../grading/criteria-of';
import type { Lab } from '../variants/labs';
import { db } from './db';
import { labTaskOf } from './lab-tasks/lab-tasks';

export type MarkFacts = { total: number; gateFailed: boolean; graderVersion: number };

export type RegradeChange = {
  attemptId: string;
  /** Null where it had no mark. */
  old: MarkFacts | null;
  now: MarkFacts;
  /** 'lowered' too where a gate that had been passed is failed. 'elsewhere': the same mark, got otherwise. */
  kind: 'raised' | 'lowered' | 'elsewhere';
  /** The criteria that differ; null on the side that does not know one. */
  criteria: { id: string; old: number | null; now: number | null; possible: number }[];
};

/** What a replay of one attempt came to. */
type Replay =
  | { kind: 'same' }
  | { kind: 'refused'; message: string }
  | {
      kind: 'changed';
      change: RegradeChange;
      lab: Lab;
      stored: StoredMark | null;
      result: LabResultOf;
    };
type LabResultOf = Extract<
  ReturnType<ReturnType<typeof labTaskOf>['remark']>,
  { ok: true }
>['value'];
type StoredMark = NonNullable<Awaited<ReturnType<typeof loadAttempt>>>['marks'][number];

const loadAttempt = (attemptId: string) =>
  db().attempt.findUnique({
    where: { id: attemptId },
    select: {
      lab: true,
      variant: true,
      answerKey: true,
      submission: true,
      marks: {
        orderBy: { graderVersion: 'desc' },
        take: 1,
        select: { graderVersion: true, total: true, gateFailed: true, result: true },
      },
    },
  });

/** Marks an attempt's submission anew with today's grader and compares; writes nothing. */
export async function replay(attemptId: string): Promise<Replay> {
  const attempt = await loadAttempt(attemptId);
  if (attempt === null || attempt.submission === null)
    return { kind: 'refused', message: 'What was handed in is no longer kept.' };
  const task = labTaskOf(attempt.lab);
  const [stored = null] = attempt.marks;
  if (stored !== null && stored.graderVersion > task.graderVersion) {
    const message = `It was marked by grader ${String(stored.graderVersion)}, which is newer than this product’s.`;
    return { kind: 'refused', message };
  }
  const marked = task.remark(attempt);
  if (!marked.ok) return { kind: 'refused', message: marked.problem.message };
  const result = marked.value;
  const old = stored === null ? null : { ...factsOf(stored), graderVersion: stored.graderVersion };
  const now = {
    total: result.total,
    gateFailed: gateFailedIn(result),
    graderVersion: result.graderVersion,
  };
  const criteria = differing(
    stored === null ? [] : criteriaOf(task.readResult(stored.result)),
    criteriaOf(result),
  );
  const kind = kindOf(old, now);
  if (kind === 'elsewhere' && criteria.length === 0) return { kind: 'same' };
  const change: RegradeChange = { attemptId, old, now, kind, criteria };
  return { kind: 'changed', change, lab: task.lab, stored, result };
}

const factsOf = ({ total, gateFailed }: { total: number; gateFailed: boolean }) => ({
  total,
  gateFailed,
});

function kindOf(old: MarkFacts | null, now: MarkFacts): RegradeChange['kind'] {
  if (old === null) return 'raised';
  const difference = withoutNoise(now.total) - withoutNoise(old.total);
  if (difference < 0 || (now.gateFailed && !old.gateFailed)) return 'lowered';
  return difference > 0 || old.gateFailed !== now.gateFailed ? 'raised' : 'elsewhere';
}

function differing(old: readonly CriterionMark[], now: readonly CriterionMark[]) {
  const ids = [...new Set([...now, ...old].map(({ id }) => id))];
  return ids.flatMap((id) => {
    const before = old.find((one) => one.id === id);
    const after = now.find((one) => one.id === id);
    const same =
      before !== undefined &&
      after !== undefined &&
      withoutNoise(before.earned) === withoutNoise(after.earned) &&
      withoutNoise(before.possible) === withoutNoise(after.possible);
    return same
      ? []
      : [
          {
            id,
            old: before?.earned ?? null,
            now: after?.earned ?? null,
            possible: (after ?? before)?.possible ?? 0,
          },
        ];
  });
}
