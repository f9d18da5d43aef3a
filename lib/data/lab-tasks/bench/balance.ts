import 'server-only';
import { gradeBalance, balanceGraderVersion } from '../../../grading/bench/balance/grade-balance';
import { balanceModelAnswer } from '../../../grading/bench/balance/balance-model-answer';
import {
  balanceDraftSchema,
  balanceSubmissionSchema,
  emptyBalanceDraft,
} from '../../../grading/bench/balance/balance-submission';
import { generateBalance } from '../../../variants/bench/balance/generate-balance';
import { balanceTemplates } from '../../../variants/bench/balance/balance-variant';
import { defineBenchTask } from './bench-task';
import { balanceResultSchema, balanceVariantSchema } from './stored-balance';

export const balance = defineBenchTask({
  lab: 'balance',
  title: 'Balance',
  templates: balanceTemplates,
  variantSchema: balanceVariantSchema,
  draftSchema: balanceDraftSchema,
  emptyDraft: emptyBalanceDraft,
  submissionSchema: balanceSubmissionSchema,
  resultSchema: balanceResultSchema,
  graderVersion: balanceGraderVersion,
  // When the rules change, the old grader stays here under its version: a regrade is a replay.
  graders: new Map([[balanceGraderVersion, gradeBalance]]),
  generate: generateBalance,
  modelAnswer: balanceModelAnswer,
  // Four hundred actions of some forty characters.
  longestJson: 24_000,
});
