import 'server-only';
import { loadCatalogue } from '../../../content/sky-catalogue';
import {
  gradeDressRehearsal,
  dressRehearsalGraderVersion,
} from '../../../grading/bench/dress-rehearsal/grade-dress-rehearsal';
import { dressRehearsalModelAnswer } from '../../../grading/bench/dress-rehearsal/dress-rehearsal-model-answer';
import {
  dressRehearsalDraftSchema,
  dressRehearsalSubmissionSchema,
  emptyDressRehearsalDraft,
  longestRehearsalAsJson,
  type DressRehearsalSubmission,
} from '../../../grading/bench/dress-rehearsal/dress-rehearsal-submission';
import { generateDressRehearsal } from '../../../variants/bench/dress-rehearsal/generate-dress-rehearsal';
import {
  dressRehearsalTemplates,
  type DressRehearsalVariant,
} from '../../../variants/bench/dress-rehearsal/dress-rehearsal-variant';
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
  longestJson: longestRehearsalAsJson,
  // When the rules change, the old grader stays here under its version: a regrade is a replay. The run
  // is steered under the catalogue's stars, which no other bench has.
  graders: new Map([
    [
      dressRehearsalGraderVersion,
      (work: { variant: DressRehearsalVariant; submission: DressRehearsalSubmission }) =>
        gradeDressRehearsal({ ...work, catalogue: loadCatalogue() }),
    ],
  ]),
  generate: (input) => generateDressRehearsal({ ...input, catalogue: loadCatalogue() }),
  modelAnswer: (variant) => dressRehearsalModelAnswer({ variant, catalogue: loadCatalogue() }),
});
