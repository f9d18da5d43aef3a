import 'server-only';
import { bestStars } from '../../alignment/operator-stars';
import { perfectLog } from '../../alignment/perfect-operator';
import { longestLogAsJson } from '../../alignment/run-log';
import { declinationAt } from '../../clock/declination';
import { loadCatalogue } from '../../content/sky-catalogue';
import { runGrader, runGraderVersion } from '../../grading/graders';
import {
  emptyRunDraft,
  runDraftSchema,
  runSubmissionSchema,
  type RunSubmissionRefusal,
} from '../../grading/run-submission';
import type { AnswerKey } from '../../pointing/answer-key';
import { storedAnswerKey } from '../../pointing/stored-answer-key';
import { instantOfLocalTime } from '../../sky/local-time';
import { canBeRun, generateRunVariant } from '../../variants/generate-run-variant';
import { runTemplates, type RunVariant } from '../../variants/run-variant';
import type { Scenario } from '../../pointing/scenario';
import { failure, type Problem } from '../result';
import { defineLabTask } from './lab-task';
import { runKitFor } from './run-kit-for';
import { stillOpen } from './still-open';
import { runResultSchema, runVariantSchema } from './stored-run';
import { storedAnswerKeySchema } from './stored-sky';

const runTask = defineLabTask({
  lab: 'alignment-run',
  title: 'Alignment run',
  templates: runTemplates,
  variantSchema: runVariantSchema,
  answerKeySchema: storedAnswerKeySchema,
  draftSchema: runDraftSchema,
  emptyDraft: emptyRunDraft,
  submissionSchema: runSubmissionSchema,
  resultSchema: runResultSchema,
  keepsLatestDraftOnly: true,
  longestJson: longestLogAsJson,
  graderVersion: runGraderVersion,

  make({ kitId, ...input }) {
    const { scenario } = input;
    const catalogue = loadCatalogue();
    const variant = generateRunVariant({
      ...input,
      catalogue,
      kit: runKitFor(kitId, scenario),
      declinationDeg: declinationOf(scenario),
    });
    const answerKey = storedAnswerKey({
      scenario: variant.scenario,
      instant: variant.frame.instant,
      frame: variant.frame,
      catalogue,
    });
    return { variant, answerKey };
  },

  grade(graderVersion, work) {
    const grader = runGrader(graderVersion);
    if (grader === undefined) throw new Error(`there is no grader of version ${graderVersion}`);
    const grading = grader({ ...work, catalogue: loadCatalogue() });
    return grading.ok
      ? grading
      : failure(grading.refusal.code, `${refusalMessage(grading.refusal)} ${stillOpen}`);
  },

  sample: perfectRun,
});

export const alignmentRun = {
  ...runTask,

  /** A sky too bright to align under is told, not given. */
  whyNoRound({ scenario, frame }: RunVariant): Problem | null {
    const catalogue = loadCatalogue();
    const { pairs } = storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue });
    return canBeRun({ frame, pairs }) ? null : tooBright;
  },
};

const tooBright: Problem = {
  code: 'too-bright',
  message:
    'At this time the sky here shows no two stars to align on, or the Sun is up. Choose a darker time, another date or another place.',
  field: 'localTime',
};

/** Years that no model of the Earth's field covers have a compass that tells true north. */
function declinationOf({ place, localTime, timeZone }: Scenario): number {
  const time = instantOfLocalTime(localTime, timeZone);
  const declination = time.ok ? declinationAt(place, time.instant) : null;
  return declination?.ok === true ? declination.declinationDeg : 0;
}

/** What an operator who makes no mistake gets of a task; null where it has no pair of usable stars. */
function perfectRun({ variant, answerKey }: { variant: RunVariant; answerKey: AnswerKey }) {
  const catalogue = loadCatalogue();
  const input = { ...variant, catalogue };
  const stars = bestStars(input);
  const grader = runGrader(runGraderVersion);
  if (stars === null || grader === undefined) return null;
  const submission = { log: perfectLog(input, stars) };
  const grading = grader({ variant, answerKey, submission, catalogue });
  if (!grading.ok) throw new Error(`a perfect run was refused: ${grading.refusal.code}`);
  const { outcome, achievedHitRate, minutes, total } = grading.result;
  return {
    outcome,
    hitRate: achievedHitRate,
    minutes,
    total,
    names: grading.result.stars.map(({ name }) => name),
    setup: variant.setup,
  };
}

function refusalMessage(refusal: RunSubmissionRefusal): string {
  switch (refusal.code) {
    case 'does-not-add-up':
      return 'This run does not add up: what it says was read is not where its own moves lead.';
    case 'not-finished':
      return 'This run has no end yet: confirm two stars, then say whether you trust the alignment.';
  }
}
