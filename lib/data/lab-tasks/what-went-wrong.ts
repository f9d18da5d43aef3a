import 'server-only';
import { loadCatalogue } from '../../content/sky-catalogue';
import {
  emptyFaultDraft,
  faultDraftSchema,
  faultSubmissionSchema,
} from '../../grading/fault-submission';
import { faultGrader, faultGraderVersion } from '../../grading/graders';
import { faultTemplates } from '../../variants/fault-variant';
import { generateFaultVariant } from '../../variants/generate-fault-variant';
import { failure } from '../result';
import { defineLabTask } from './lab-task';
import { runKitFor } from './run-kit-for';
import { looksOf } from './fault-looks';
import { stillOpen } from './still-open';
import { faultAnswerKeySchema, faultResultSchema, faultVariantSchema } from './stored-fault';

export const whatWentWrong = defineLabTask({
  lab: 'what-went-wrong',
  title: 'What went wrong?',
  templates: faultTemplates,
  variantSchema: faultVariantSchema,
  answerKeySchema: faultAnswerKeySchema,
  draftSchema: faultDraftSchema,
  emptyDraft: emptyFaultDraft,
  submissionSchema: faultSubmissionSchema,
  resultSchema: faultResultSchema,
  keepsLatestDraftOnly: false,
  longestJson: 2000,
  graderVersion: faultGraderVersion,

  make: ({ seed, scenario, templates, windowMinutes, kitId }) =>
    generateFaultVariant({
      seed,
      scenario,
      templates,
      windowMinutes,
      catalogue: loadCatalogue(),
      kit: runKitFor(kitId, scenario),
    }),

  grade(graderVersion, work) {
    const grader = faultGrader(graderVersion);
    if (grader === undefined) throw new Error(`there is no grader of version ${graderVersion}`);
    const grading = grader(work);
    return grading.ok
      ? grading
      : failure(
          grading.refusal.code,
          `Choose the fault, the cure and the test slew from those offered. ${stillOpen}`,
        );
  },

  withLooks: {
    // Its pieces come with the page, so a draft may claim no look that was not given out.
    draft: (draft, lookedAt) => ({ ...draft, ...looksOf(lookedAt) }),
    submission(submission, lookedAt) {
      const { looked, testSlew } = looksOf(lookedAt);
      return {
        ...submission,
        looked: [...new Set([...looked, ...submission.looked])],
        testSlew: testSlew ?? submission.testSlew,
      };
    },
  },

  /** What such an evening shows, and what was behind it. */
  sample: ({ variant: { evidence }, answerKey: { fault, alike, cures } }) => ({
    fault,
    alike,
    cures,
    evidence,
  }),
});
