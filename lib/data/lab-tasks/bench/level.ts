import 'server-only';
import { gradeLevel, levelGraderVersion } from '../../../grading/bench/level/grade-level';
import { levelModelAnswer } from '../../../grading/bench/level/level-model-answer';
import {
  levelDraftSchema,
  levelSubmissionSchema,
  emptyLevelDraft,
} from '../../../grading/bench/level/level-submission';
import { generateLevel } from '../../../variants/bench/level/generate-level';
import { levelTemplates } from '../../../variants/bench/level/level-variant';
import { defineBenchTask } from './bench-task';
import { levelResultSchema, levelVariantSchema } from './stored-level';

export const level = defineBenchTask({
  lab: 'level',
  title: 'Level',
  templates: levelTemplates,
  variantSchema: levelVariantSchema,
  draftSchema: levelDraftSchema,
  emptyDraft: emptyLevelDraft,
  submissionSchema: levelSubmissionSchema,
  resultSchema: levelResultSchema,
  graderVersion: levelGraderVersion,
  // When the rules change, the old grader stays here under its version: a regrade is a replay.
  graders: new Map([[levelGraderVersion, gradeLevel]]),
  generate: generateLevel,
  modelAnswer: levelModelAnswer,
});
