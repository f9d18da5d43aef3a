import 'server-only';
import { loadCatalogue } from '../content/sky-catalogue';
import { pairGraderVersion } from '../grading/graders';
import type { Scenario } from '../pointing/scenario';
import { storedAnswerKey } from '../pointing/stored-answer-key';
import { generatePairVariant } from '../variants/generate-pair-variant';
import type { PairTemplate } from '../variants/pair-variant';

/**
 * What an attempt freezes at its start: its variant, the answer key, and the versions of everything
 * that made them. From here on neither the sky nor the rules are computed again.
 */
export function frozenTask(input: {
  seed: string;
  scenario: Scenario;
  templates: readonly PairTemplate[];
  /** Kinds of task the student has had; others go first while there are any. */
  templatesSeen: readonly string[];
  windowMinutes: number;
}) {
  const catalogue = loadCatalogue();
  const { seed, scenario, windowMinutes } = input;
  const fresh = input.templates.filter((template) => !input.templatesSeen.includes(template));
  const templates = fresh.length > 0 ? fresh : input.templates;
  const variant = generatePairVariant({ seed, scenario, templates, windowMinutes, catalogue });
  const answerKey = storedAnswerKey({
    scenario: variant.scenario,
    instant: variant.frame.instant,
    frame: variant.frame,
    catalogue,
  });
  return {
    seed,
    template: variant.template,
    variant,
    answerKey,
    graderVersion: pairGraderVersion,
    generatorVersion: variant.generatorVersion,
    catalogueVersion: catalogue.version,
    zoneRulesVersion: process.versions['tz'] ?? 'unknown',
  };
}
