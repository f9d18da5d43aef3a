import { expect } from 'vitest';
import { perfectLog, type OperatorOptions } from '@/lib/alignment/perfect-operator';
import type { OperatorStars } from '@/lib/alignment/operator-stars';
import { gradeRun } from '@/lib/grading/grade-run';
import type { RunResult } from '@/lib/grading/run-result';
import { runSubmissionSchema } from '@/lib/grading/run-submission';
import { runTemplates, type RunTemplate } from '@/lib/variants/run-variant';
import type { RunNight } from './run-nights';

/** What an operator's run on a night is marked with; by default the best pair, without a slip. */
export function resultOf(
  { variant, answerKey, input, best }: RunNight,
  options: OperatorOptions = {},
  stars: OperatorStars = best,
): RunResult {
  const log = perfectLog(input, stars, options);
  const submission = runSubmissionSchema.parse({ log });
  const grading = gradeRun({ variant, answerKey, submission, catalogue: input.catalogue });
  if (!grading.ok) throw new Error(`refused: ${JSON.stringify(grading.refusal)}`);
  return grading.result;
}

/** Of each kind of run there must be a good number, or the nights say nothing of it. */
export function expectFullMarksOnEvery(nights: Iterable<RunNight>): void {
  const made = new Map<RunTemplate, number>();
  for (const night of nights) {
    expectFullMarks(night);
    const { template } = night.variant;
    made.set(template, (made.get(template) ?? 0) + 1);
  }
  for (const template of runTemplates) {
    expect(made.get(template) ?? 0, template).toBeGreaterThan(20);
  }
}

function expectFullMarks(night: RunNight): void {
  const result = resultOf(night);
  const { latitudeDeg } = night.variant.scenario.place;
  const about = `${night.variant.kit.name} at ${latitudeDeg}° on ${night.variant.frame.instant}`;
  expect(result.total, `${about}: ${JSON.stringify(result.criteria)}`).toBeGreaterThan(99.999);
  expect(result.advice, about).toEqual({ code: 'well-done' });
  expect(result.gates, about).toEqual([]);
  for (const star of result.stars) expect(star.finalApproachKept, about).toBe(true);
}
