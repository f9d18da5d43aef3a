import 'server-only';
import { gradeField, fieldGraderVersion } from '../../../grading/bench/field/grade-field';
import { fieldModelAnswer } from '../../../grading/bench/field/field-model-answer';
import {
  fieldDraftSchema,
  fieldSubmissionSchema,
  emptyFieldDraft,
} from '../../../grading/bench/field/field-submission';
import { generateField } from '../../../variants/bench/field/generate-field';
import { fieldTemplates } from '../../../variants/bench/field/field-variant';
import { defineBenchTask } from './bench-task';
import { fieldResultSchema, fieldVariantSchema } from './stored-field';

export const field = defineBenchTask({
  lab: 'field',
  title: 'Field',
  templates: fieldTemplates,
  variantSchema: fieldVariantSchema,
  draftSchema: fieldDraftSchema,
  emptyDraft: emptyFieldDraft,
  submissionSchema: fieldSubmissionSchema,
  resultSchema: fieldResultSchema,
  graderVersion: fieldGraderVersion,
  // When the rules change, the old grader stays here under its version: a regrade is a replay.
  graders: new Map([[fieldGraderVersion, gradeField]]),
  generate: generateField,
  modelAnswer: fieldModelAnswer,
});
