import 'server-only';
import {
  gradeClockAndPlace,
  clockAndPlaceGraderVersion,
} from '../../../grading/bench/clock-and-place/grade-clock-and-place';
import { clockAndPlaceModelAnswer } from '../../../grading/bench/clock-and-place/clock-and-place-model-answer';
import {
  clockAndPlaceDraftSchema,
  clockAndPlaceSubmissionSchema,
  emptyClockAndPlaceDraft,
} from '../../../grading/bench/clock-and-place/clock-and-place-submission';
import { generateClockAndPlace } from '../../../variants/bench/clock-and-place/generate-clock-and-place';
import { clockAndPlaceTemplates } from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import { defineBenchTask } from './bench-task';
import { clockAndPlaceResultSchema, clockAndPlaceVariantSchema } from './stored-clock-and-place';

export const clockAndPlace = defineBenchTask({
  lab: 'clock-and-place',
  title: 'Clock and place',
  templates: clockAndPlaceTemplates,
  variantSchema: clockAndPlaceVariantSchema,
  draftSchema: clockAndPlaceDraftSchema,
  emptyDraft: emptyClockAndPlaceDraft,
  submissionSchema: clockAndPlaceSubmissionSchema,
  resultSchema: clockAndPlaceResultSchema,
  graderVersion: clockAndPlaceGraderVersion,
  // When the rules change, the old grader stays here under its version: a regrade is a replay.
  graders: new Map([[clockAndPlaceGraderVersion, gradeClockAndPlace]]),
  generate: generateClockAndPlace,
  modelAnswer: clockAndPlaceModelAnswer,
});
