'use server';

import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { failure, type Result } from '@/lib/data/result';
import type { AnyBenchResult } from '@/lib/grading/bench/any-bench-result';
import { isBenchLab } from '@/lib/variants/bench/bench-labs';
import { gradeRoundOf } from '../grade-round';

/** Marks a visitor's answer. Nothing is kept. */
export async function gradeRound(
  lab: unknown,
  round: unknown,
  sent: unknown,
): Promise<Result<{ result: AnyBenchResult | null; late: boolean }>> {
  if (typeof lab !== 'string' || !isBenchLab(lab))
    return failure('bad-input', 'There is no such lab.');
  return gradeRoundOf<AnyBenchResult>(labTasks[lab], round, sent);
}
