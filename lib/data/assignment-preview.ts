import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import { loadCatalogue } from '../content/sky-catalogue';
import { faultAskSchema } from '../grading/fault-submission';
import { faultPiece, type FaultSeen } from '../variants/fault-seen';
import type { FaultVariant } from '../variants/fault-variant';
import { classAccessSelect } from './access';
import { partsSelect, readParts } from './assignment-parts';
import { db } from './db';
import { hmacOf } from './env';
import { faultVariantSchema } from './lab-tasks/stored-fault';
import { labTaskOf, type LabResult, type OpenContent } from './lab-tasks/lab-tasks';
import { failure, notFound, success, type Result } from './result';

/** A task as a student may get it: made of the page's address, marked at once, and kept nowhere. */
export type PreviewTask = {
  title: string;
  placeName: string;
  kitId: string | null;
} & OpenContent;

/** Which task of which part is looked at; another round is another task. */
export type PreviewAddress = { assignmentId: string; partId: string; round: string };

/** For whoever may see the class: what its students get, before and after they get it. */
async function makeTask(viewer: Viewer, { assignmentId, partId, round }: PreviewAddress) {
  const row = await db().assignment.findUnique({
    where: { id: assignmentId },
    select: { title: true, class: { select: classAccessSelect }, parts: partsSelect },
  });
  if (row === null || !canSeeClass(viewer, row.class)) return null;
  const { parts, scenario, placeName, kitId } = readParts(row.parts);
  const part = parts.find((one) => one.partId === partId);
  if (part === undefined) return null;
  const task = labTaskOf(part.lab);
  const frozen = task.freeze({
    ...part,
    scenario,
    kitId,
    mayPause: true,
    // Never the seed of a student's attempt.
    seed: hmacOf('preview', assignmentId, partId, round),
  });
  return { task, frozen, title: row.title, placeName, kitId };
}

export async function getPreviewTask(
  viewer: Viewer,
  address: PreviewAddress,
): Promise<PreviewTask | null> {
  const made = await makeTask(viewer, address);
  if (made === null) return null;
  const { task, frozen, title, placeName, kitId } = made;
  const open = task.open({ variant: frozen.variant, draft: null, lookedAt: [] });
  return { title, placeName, kitId, ...open };
}

/** Makes the task again from its address and marks the answer by the rules of its lab. Nothing is kept. */
export async function markPreview(
  viewer: Viewer,
  address: PreviewAddress,
  input: unknown,
): Promise<Result<LabResult>> {
  const made = await makeTask(viewer, address);
  if (made === null) return notFound();
  const read = made.task.readSubmission(input);
  if (!read.ok) return read;
  const marked = read.value.mark(made.frozen, []);
  return marked.ok ? success(marked.value.result) : marked;
}

/** The evening of a task of “What went wrong?”, for all its evidence once it was answered. */
export async function previewEvening(
  viewer: Viewer,
  address: PreviewAddress,
): Promise<{ variant: FaultVariant; placeName: string } | null> {
  const made = await makeTask(viewer, address);
  if (made?.task.lab !== 'what-went-wrong') return null;
  const variant = faultVariantSchema.parse(made.frozen.variant);
  return { variant, placeName: made.placeName };
}

/** One piece of evidence of such a task; nothing counts here, so nothing is written down. */
export async function lookInPreview(
  viewer: Viewer,
  address: PreviewAddress,
  what: unknown,
): Promise<Result<FaultSeen>> {
  const evening = await previewEvening(viewer, address);
  if (evening === null) return notFound();
  const ask = faultAskSchema.safeParse(what);
  if (!ask.success) return failure('bad-input', 'There is no such piece of evidence.');
  return success(faultPiece(evening.variant, ask.data, loadCatalogue()));
}
