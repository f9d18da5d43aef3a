import 'server-only';
import type { AssignmentInput } from './assignment-input';
import { planParts, type PartPlan } from './assignment-part-plan';
import { partsSelect, readParts } from './assignment-parts';
import type { Transaction } from './db';
import { success, type Result } from './result';

/** Marked parts stand at 1 to 12, and the lessons to read behind them. */
const firstLessonPosition = 101;
/** Where parts wait while they change places: no two may stand at one position, not for a moment. */
const aside = 1000;

const columnsOfPart = (part: AssignmentInput['parts'][number], scenarioVersionId: string) => ({
  kind: 'lab' as const,
  reference: part.lab,
  scenarioVersionId,
  templates: part.templates,
  windowMinutes: part.windowMinutes,
  minutesAllowed: part.minutesAllowed,
  weight: part.weight,
});

const lessonRows = (lessons: readonly string[]) =>
  lessons.map((reference, index) => ({
    position: firstLessonPosition + index,
    kind: 'lesson' as const,
    reference,
    // A lesson is read, and not marked.
    weight: 0,
  }));

/** Every part of a new assignment, with the evening that they share. */
export async function newParts(
  transaction: Transaction,
  classId: string,
  input: Pick<AssignmentInput, 'placeName' | 'kitId' | 'siteId' | 'scenario' | 'parts' | 'lessons'>,
  now: Date,
) {
  const { placeName, kitId, siteId, scenario: content } = input;
  const version = { version: 1, placeName, kitId, siteId, content, createdAt: now };
  const { versions } = await transaction.scenario.create({
    data: { classId, versions: { create: version } },
    select: { versions: { select: { id: true } } },
  });
  const [created] = versions;
  if (created === undefined) throw new Error('the scenario was stored without its version');
  return [
    ...input.parts.map((part, index) => ({
      position: index + 1,
      ...columnsOfPart(part, created.id),
    })),
    ...lessonRows(input.lessons),
  ];
}

/** What the new parts do to the ones that are stored, before anything is written. */
export async function planReplacement(
  transaction: Transaction,
  assignmentId: string,
  next: AssignmentInput,
): Promise<Result<{ before: ReturnType<typeof readParts>; plan: PartPlan; used: boolean }>> {
  const rows = await transaction.assignmentPart.findMany({
    where: { assignmentId },
    ...partsSelect,
  });
  const before = readParts(rows);
  const worked = await transaction.attempt.findMany({
    where: { partId: { in: before.parts.map(({ partId }) => partId) } },
    distinct: ['partId'],
    select: { partId: true },
  });
  const planned = planParts({
    stored: before.parts,
    workedOn: new Set(worked.flatMap(({ partId }) => partId ?? [])),
    next: next.parts,
  });
  return planned.ok ? success({ before, plan: planned.value, used: worked.length > 0 }) : planned;
}

/**
 * What is under way keeps the sky it started with: a scenario that an attempt has used is never changed,
 * the assignment gets a new version of it.
 */
export async function replaceParts(
  transaction: Transaction,
  assignmentId: string,
  {
    before,
    plan,
    used,
    next,
    now,
  }: {
    before: ReturnType<typeof readParts>;
    plan: PartPlan;
    /** Whether an attempt has used the scenario. */
    used: boolean;
    next: AssignmentInput;
    now: Date;
  },
): Promise<void> {
  const scenarioVersionId = await sceneOf(transaction, before, next, used, now);
  await writeParts(transaction, assignmentId, plan, scenarioVersionId);
  await transaction.assignmentPart.deleteMany({ where: { assignmentId, kind: 'lesson' } });
  await transaction.assignmentPart.createMany({
    data: lessonRows(next.lessons).map((row) => ({ ...row, assignmentId })),
  });
}

/** The id of the version of the scenario that the parts are set under from now on. */
async function sceneOf(
  transaction: Transaction,
  before: ReturnType<typeof readParts>,
  { placeName, kitId, siteId, scenario: content }: AssignmentInput,
  used: boolean,
  now: Date,
): Promise<string> {
  const data = { placeName, kitId, siteId, content };
  const same =
    JSON.stringify([before.placeName, before.kitId, before.siteId, before.scenario]) ===
    JSON.stringify([placeName, kitId, siteId, content]);
  if (same) return before.scenarioVersionId;
  if (!used) {
    await transaction.scenarioVersion.update({ where: { id: before.scenarioVersionId }, data });
    return before.scenarioVersionId;
  }
  const { scenarioId, scenarioVersion } = before;
  const created = await transaction.scenarioVersion.create({
    data: { ...data, scenarioId, version: scenarioVersion + 1, createdAt: now },
    select: { id: true },
  });
  return created.id;
}

async function writeParts(
  transaction: Transaction,
  assignmentId: string,
  { keep, remove }: PartPlan,
  scenarioVersionId: string,
): Promise<void> {
  await transaction.assignmentPart.deleteMany({ where: { id: { in: [...remove] } } });
  await transaction.assignmentPart.updateMany({
    where: { assignmentId },
    data: { position: { increment: aside } },
  });
  for (const [index, { partId, part }] of keep.entries()) {
    const data = { position: index + 1, ...columnsOfPart(part, scenarioVersionId) };
    if (partId === null) {
      await transaction.assignmentPart.create({ data: { ...data, assignmentId } });
    } else {
      await transaction.assignmentPart.update({ where: { id: partId }, data });
    }
  }
}
