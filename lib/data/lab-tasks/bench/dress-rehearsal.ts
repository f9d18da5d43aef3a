import 'server-only';
import {
  gradeDressRehearsal,
  dressRehearsalGraderVersion,
} from '../../../grading/bench/grade-dress-rehearsal';
import { dressRehearsalModelAnswer } from '../../../grading/bench/dress-rehearsal-model-answer';
import {
  dressRehearsalDraftSchema,
  dressRehearsalSubmissionSchema,
  emptyDressRehearsalDraft,
} from '../../../grading/bench/dress-rehearsal-submission';
import { generateDressRehearsal } from '../../../variants/bench/generate-dress-rehearsal';
import { dressRehearsalTemplates } from '../../../variants/bench/dress-rehearsal-variant';
import { defineBenchTask } from './bench-task';
import { dressRehearsalResultSchema, dressRehearsalVariantSchema } from './stored-dress-rehearsal';

export const dressRehearsal = defineBenchTask({
  lab: 'dress-rehearsal',
  title: 'Dress rehearsal',
  templates: dressRehearsalTemplates,
  variantSchema: dressRehearsalVariantSchema,
  draftSchema: dressRehearsalDraftSchema,
  emptyDraft: emptyDressRehearsalDraft,
  submissionSchema: dressRehearsalSubmissionSchema,
  resultSchema: dressRehearsalResultSchema,
  graderVersion: dressRehearsalGraderVersion,
  // When the rules change, the old grader stays here under its version: a regrade is a replay.
  graders: new Map([[dressRehearsalGraderVersion, gradeDressRehearsal]]),
  generate: generateDressRehearsal,
  modelAnswer: dressRehearsalModelAnswer,
});
