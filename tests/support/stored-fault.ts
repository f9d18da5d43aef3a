import { faultAnswerKeySchema, faultVariantSchema } from '../../lib/data/lab-tasks/stored-fault';
import type { FaultResult } from '../../lib/grading/fault-result';
import { faultSubmissionSchema } from '../../lib/grading/fault-submission';
import { gradeFault } from '../../lib/grading/grade-fault';
import { storedAttempt } from './stored-work';

/** The evening and what was behind it, as an attempt keeps them. */
export function faultTaskOf(dataFolder: string, attemptId: string) {
  const { variant, answerKey } = storedAttempt(dataFolder, attemptId);
  return {
    variant: faultVariantSchema.parse(variant),
    answerKey: faultAnswerKeySchema.parse(answerKey),
  };
}

/** What came of the answer that was handed in, marked here again. */
export function faultByEngine(dataFolder: string, attemptId: string): FaultResult {
  const { submission } = storedAttempt(dataFolder, attemptId);
  const grading = gradeFault({
    ...faultTaskOf(dataFolder, attemptId),
    submission: faultSubmissionSchema.parse(submission),
  });
  if (!grading.ok) throw new Error(`not marked: ${grading.refusal.code}`);
  return grading.result;
}
