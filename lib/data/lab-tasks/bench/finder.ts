import 'server-only';
import { gradeFinder, finderGraderVersion } from '../../../grading/bench/finder/grade-finder';
import { finderModelAnswer } from '../../../grading/bench/finder/finder-model-answer';
import {
  finderDraftSchema,
  finderSubmissionSchema,
  emptyFinderDraft,
} from '../../../grading/bench/finder/finder-submission';
import { generateFinder } from '../../../variants/bench/finder/generate-finder';
import { finderTemplates } from '../../../variants/bench/finder/finder-variant';
import { defineBenchTask } from './bench-task';
import { finderResultSchema, finderVariantSchema } from './stored-finder';

export const finder = defineBenchTask({
  lab: 'finder',
  title: 'Finder',
  templates: finderTemplates,
  variantSchema: finderVariantSchema,
  draftSchema: finderDraftSchema,
  emptyDraft: emptyFinderDraft,
  submissionSchema: finderSubmissionSchema,
  resultSchema: finderResultSchema,
  graderVersion: finderGraderVersion,
  // When the rules change, the old grader stays here under its version: a regrade is a replay.
  graders: new Map([[finderGraderVersion, gradeFinder]]),
  generate: generateFinder,
  modelAnswer: finderModelAnswer,
  // Every bend of an open tube's way is kept, as any of them may lead past the Sun.
  longestJson: 60_000,
});
