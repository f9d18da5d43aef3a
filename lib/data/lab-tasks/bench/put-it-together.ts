import 'server-only';
import {
  gradePutItTogether,
  putItTogetherGraderVersion,
} from '../../../grading/bench/put-it-together/grade-put-it-together';
import { putItTogetherModelAnswer } from '../../../grading/bench/put-it-together/put-it-together-model-answer';
import {
  putItTogetherDraftSchema,
  putItTogetherSubmissionSchema,
  emptyPutItTogetherDraft,
} from '../../../grading/bench/put-it-together/put-it-together-submission';
import { generatePutItTogether } from '../../../variants/bench/put-it-together/generate-put-it-together';
import { putItTogetherTemplates } from '../../../variants/bench/put-it-together/put-it-together-variant';
import { defineBenchTask } from './bench-task';
import { putItTogetherResultSchema, putItTogetherVariantSchema } from './stored-put-it-together';

export const putItTogether = defineBenchTask({
  lab: 'put-it-together',
  title: 'Put it together',
  templates: putItTogetherTemplates,
  variantSchema: putItTogetherVariantSchema,
  draftSchema: putItTogetherDraftSchema,
  emptyDraft: emptyPutItTogetherDraft,
  submissionSchema: putItTogetherSubmissionSchema,
  resultSchema: putItTogetherResultSchema,
  graderVersion: putItTogetherGraderVersion,
  // When the rules change, the old grader stays here under its version: a regrade is a replay.
  graders: new Map([[putItTogetherGraderVersion, gradePutItTogether]]),
  generate: generatePutItTogether,
  modelAnswer: putItTogetherModelAnswer,
});
