import 'server-only';
import { loadCatalogue } from '../../content/sky-catalogue';
import { rightPairs } from '../../grading/allowed-pairs';
import { pairGrader, pairGraderVersion } from '../../grading/graders';
import {
  emptyPairDraft,
  pairDraftSchema,
  pairSubmissionSchema,
  type PairRefusal,
} from '../../grading/pair-submission';
import { storedAnswerKey } from '../../pointing/stored-answer-key';
import { generatePairVariant } from '../../variants/generate-pair-variant';
import { pairTemplates } from '../../variants/pair-variant';
import { failure } from '../result';
import { defineLabTask } from './lab-task';
import { stillOpen } from './still-open';
import { pairResultSchema, pairVariantSchema } from './stored-pair';
import { storedAnswerKeySchema } from './stored-sky';

export const pickThePair = defineLabTask({
  lab: 'pick-the-pair',
  title: 'Pick the pair',
  templates: pairTemplates,
  variantSchema: pairVariantSchema,
  answerKeySchema: storedAnswerKeySchema,
  draftSchema: pairDraftSchema,
  emptyDraft: emptyPairDraft,
  submissionSchema: pairSubmissionSchema,
  resultSchema: pairResultSchema,
  keepsLatestDraftOnly: false,
  longestJson: 2000,
  graderVersion: pairGraderVersion,

  make({ seed, scenario, templates, windowMinutes }) {
    const catalogue = loadCatalogue();
    const variant = generatePairVariant({ seed, scenario, templates, windowMinutes, catalogue });
    const answerKey = storedAnswerKey({
      scenario: variant.scenario,
      instant: variant.frame.instant,
      frame: variant.frame,
      catalogue,
    });
    return { variant, answerKey };
  },

  grade(graderVersion, work) {
    const grader = pairGrader(graderVersion);
    if (grader === undefined) throw new Error(`there is no grader of version ${graderVersion}`);
    const grading = grader({ ...work, catalogue: loadCatalogue() });
    return grading.ok
      ? grading
      : failure(grading.refusal.code, `${refusalMessage(grading.refusal)} ${stillOpen}`);
  },

  /** The best pair that this task lets be chosen; null where there is none. */
  sample: ({ variant, answerKey }) => rightPairs(variant, answerKey)[0] ?? null,
});

/** Why an answer cannot be marked, and what to do. */
function refusalMessage(refusal: PairRefusal): string {
  switch (refusal.code) {
    case 'same-star-twice':
      return 'An alignment needs two different stars: choose another one.';
    case 'not-in-this-sky':
      return 'One of the stars is not in this sky: choose it again.';
    case 'given-star-missing':
      return 'One of the two must be the star that was given.';
    case 'not-proposed':
      return 'Choose among the stars that the mount proposes.';
  }
}
