import 'server-only';
import { gradePower, powerGraderVersion } from '../../../grading/bench/power/grade-power';
import { powerModelAnswer } from '../../../grading/bench/power/power-model-answer';
import {
  powerDraftSchema,
  powerSubmissionSchema,
  emptyPowerDraft,
} from '../../../grading/bench/power/power-submission';
import { generatePower } from '../../../variants/bench/power/generate-power';
import { powerTemplates } from '../../../variants/bench/power/power-variant';
import { defineBenchTask } from './bench-task';
import { powerResultSchema, powerVariantSchema } from './stored-power';

export const power = defineBenchTask({
  lab: 'power',
  title: 'Power',
  templates: powerTemplates,
  variantSchema: powerVariantSchema,
  draftSchema: powerDraftSchema,
  emptyDraft: emptyPowerDraft,
  submissionSchema: powerSubmissionSchema,
  resultSchema: powerResultSchema,
  graderVersion: powerGraderVersion,
  // When the rules change, the old grader stays here under its version: a regrade is a replay.
  graders: new Map([[powerGraderVersion, gradePower]]),
  generate: generatePower,
  modelAnswer: powerModelAnswer,
});
