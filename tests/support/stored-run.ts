import { runVariantSchema } from '../../lib/data/lab-tasks/stored-run';
import { gradeRun } from '../../lib/grading/grade-run';
import type { RunResult } from '../../lib/grading/run-result';
import { runDraftSchema, runSubmissionSchema } from '../../lib/grading/run-submission';
import { storedAnswerKey } from '../../lib/pointing/stored-answer-key';
import { skyFrameAt } from '../../lib/sky/frame-at';
import type { RunLog } from '../../lib/alignment/run-log';
import type { RunVariant } from '../../lib/variants/run-variant';
import { catalogue, storedAttempt, storedDraft } from './stored-work';

export const runTaskOf = (dataFolder: string, attemptId: string): RunVariant =>
  runVariantSchema.parse(storedAttempt(dataFolder, attemptId).variant);

/** What was done of an open run until it was saved last. */
export const savedLogOf = (dataFolder: string, attemptId: string): RunLog =>
  runDraftSchema.parse(storedDraft(dataFolder, attemptId)).log;

/** The log that was handed in. */
export const sentLogOf = (dataFolder: string, attemptId: string): RunLog =>
  runSubmissionSchema.parse(storedAttempt(dataFolder, attemptId).submission).log;

/**
 * What came of the log that was handed in, worked out here from the scenario and the instant alone: sky
 * and answer key anew, the log replayed, without the key or the mark that the product stored.
 */
export function runByEngine(dataFolder: string, attemptId: string): RunResult {
  const variant = runTaskOf(dataFolder, attemptId);
  const { scenario } = variant;
  const { instant } = variant.frame;
  const frame = skyFrameAt({ instant, place: scenario.place });
  const grading = gradeRun({
    variant: { ...variant, frame },
    answerKey: storedAnswerKey({ scenario, instant, frame, catalogue }),
    submission: { log: [...sentLogOf(dataFolder, attemptId)] },
    catalogue,
  });
  if (!grading.ok) throw new Error(`not marked: ${JSON.stringify(grading.refusal)}`);
  return grading.result;
}
