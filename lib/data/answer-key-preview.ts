import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import { loadCatalogue } from '../content/sky-catalogue';
import { rightPairs } from '../grading/allowed-pairs';
import type { AnswerKey, AnswerKeyPair } from '../pointing/answer-key';
import { parseScenario } from '../pointing/parse-scenario';
import { storedAnswerKey } from '../pointing/stored-answer-key';
import { skyFrameAt } from '../sky/frame-at';
import type { SkyFrame } from '../sky/sky-frame';
import { generatePairVariant } from '../variants/generate-pair-variant';
import type { PairTemplate } from '../variants/pair-variant';
import { classAccessSelect } from './access';
import { partsSelect, readParts } from './assignment-parts';
import { db } from './db';
import { hmacOf } from './env';

export type AnswerKeyPreview = {
  /** Without the faint stars that nobody picks. */
  key: AnswerKey;
  frame: SkyFrame;
  /** For each template of the assignment, the best pair that one sample variant lets be chosen; null where there is none. */
  variants: { template: PairTemplate; sample: AnswerKeyPair | null }[];
};

/** What the sky of an assignment allows, before anybody is asked. For the class's teachers only. */
export async function previewAnswerKey(
  viewer: Viewer,
  assignmentId: string,
): Promise<AnswerKeyPreview | null> {
  const row = await db().assignment.findUnique({
    where: { id: assignmentId },
    select: { class: { select: classAccessSelect }, parts: partsSelect },
  });
  if (row === null || !canSeeClass(viewer, row.class)) return null;
  const { scenario, templates, windowMinutes } = readParts(row.parts);
  const parsed = parseScenario(scenario);
  if (!parsed.ok) throw new Error('a scenario that was checked when it was saved no longer reads');
  const catalogue = loadCatalogue();
  const frame = skyFrameAt({ instant: parsed.instant, place: scenario.place });
  const key = storedAnswerKey({ scenario, instant: parsed.instant, frame, catalogue });
  const variants = templates.map((template) => {
    const seed = hmacOf('preview', assignmentId, template);
    const variant = generatePairVariant({
      seed,
      scenario,
      templates: [template],
      windowMinutes,
      catalogue,
    });
    const { instant } = variant.frame;
    const answerKey = storedAnswerKey({
      scenario: variant.scenario,
      instant,
      frame: variant.frame,
      catalogue,
    });
    return { template, sample: rightPairs(variant, answerKey)[0] ?? null };
  });
  return { key, frame, variants };
}
