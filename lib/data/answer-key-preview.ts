import 'server-only';
import { canReadNotes, type Viewer } from '../auth/policy';
import { loadCatalogue } from '../content/sky-catalogue';
import type { AnswerKey } from '../pointing/answer-key';
import { parseScenario } from '../pointing/parse-scenario';
import { storedAnswerKey } from '../pointing/stored-answer-key';
import { skyFrameAt } from '../sky/frame-at';
import type { SkyFrame } from '../sky/sky-frame';
import { classAccessSelect } from './access';
import { partsSelect, readParts } from './assignment-parts';
import { db } from './db';
import { hmacOf } from './env';
import { labTaskOf, type LabSamples } from './lab-tasks/lab-tasks';

/** Of one part of an assignment. */
export type AnswerKeyPreview = {
  partId: string;
  /** Without the faint stars that nobody picks. */
  key: AnswerKey;
  frame: SkyFrame;
} & LabSamples;

/**
 * What the sky of an assignment allows in each of its parts, before anybody is asked. For the class's
 * teachers only.
 */
export async function previewAnswerKey(
  viewer: Viewer,
  assignmentId: string,
): Promise<AnswerKeyPreview[] | null> {
  const row = await db().assignment.findUnique({
    where: { id: assignmentId },
    select: { class: { select: classAccessSelect }, parts: partsSelect },
  });
  if (row === null || !canReadNotes(viewer, row.class)) return null;
  const { parts, ...evening } = readParts(row.parts);
  const { scenario } = evening;
  const parsed = parseScenario(scenario);
  if (!parsed.ok) throw new Error('a scenario that was checked when it was saved no longer reads');
  const { instant } = parsed;
  const frame = skyFrameAt({ instant, place: scenario.place });
  const key = storedAnswerKey({ scenario, instant, frame, catalogue: loadCatalogue() });
  return parts.map((part) => ({
    partId: part.partId,
    key,
    frame,
    ...labTaskOf(part.lab).samples({ ...evening, ...part, mayPause: false }, (template) =>
      hmacOf('preview', assignmentId, template),
    ),
  }));
}
