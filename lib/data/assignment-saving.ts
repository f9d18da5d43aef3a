import 'server-only';
import { canTeachClass, type Viewer } from '../auth/policy';
import { classOfAssignment, mayWithClass } from './access';
import type { AssignmentInput } from './assignment-input';
import { partsSelect, readAssignmentInput, readParts } from './assignment-parts';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { countChecks } from './count-checks';
import { db, type Transaction } from './db';
import { failure, notFound, success, type Result } from './result';
import { columnsOfPolicy } from './stored-policy';

const partsOf = (input: AssignmentInput, scenarioVersionId: string) => [
  {
    position: 1,
    kind: 'lab' as const,
    reference: input.lab,
    scenarioVersionId,
    templates: input.templates,
    windowMinutes: input.windowMinutes,
    minutesAllowed: input.minutesAllowed,
  },
];

async function newScenario(
  transaction: Transaction,
  classId: string,
  input: AssignmentInput,
  now: Date,
): Promise<string> {
  const { placeName, kitId, siteId, scenario: content } = input;
  const version = { version: 1, placeName, kitId, siteId, content, createdAt: now };
  const { versions } = await transaction.scenario.create({
    data: { classId, versions: { create: version } },
    select: { versions: { select: { id: true } } },
  });
  const [created] = versions;
  if (created === undefined) throw new Error('the scenario was stored without its version');
  return created.id;
}

/** `input` is read with assignmentInputSchema. */
export async function createAssignment(
  viewer: Viewer,
  classId: string,
  input: unknown,
  clock: Clock = systemClock,
): Promise<Result<{ assignmentId: string }>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const read = readAssignmentInput(input);
  if (!read.ok) return read;
  const { title, dueTimeZone, policy, lessonSlug } = read.value;
  const assignmentId = await db().$transaction(async (transaction) => {
    const scenarioVersionId = await newScenario(transaction, classId, read.value, clock.now());
    const { id } = await transaction.assignment.create({
      data: {
        classId,
        title,
        dueTimeZone,
        createdAt: clock.now(),
        ...columnsOfPolicy(policy),
        parts: { create: partsOf(read.value, scenarioVersionId) },
      },
      select: { id: true },
    });
    await setLesson(transaction, id, lessonSlug);
    return id;
  });
  return success({ assignmentId });
}

async function setLesson(
  transaction: Transaction,
  assignmentId: string,
  slug: string | null,
): Promise<void> {
  await transaction.assignmentPart.deleteMany({ where: { assignmentId, kind: 'lesson' } });
  if (slug === null) return;
  await transaction.assignmentPart.create({
    data: { assignmentId, position: 0, kind: 'lesson', reference: slug },
  });
}

/**
 * What is under way keeps the sky and the policy it started with; the answer says how many those
 * are. A scenario that an attempt has used is never changed: the assignment gets a new version.
 */
export async function updateAssignment(
  viewer: Viewer,
  assignmentId: string,
  input: unknown,
  expectedVersion: number | null = null,
  clock: Clock = systemClock,
): Promise<Result<{ attemptsUnderWay: number }>> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return notFound();
  const read = readAssignmentInput(input);
  if (!read.ok) return read;
  const next = read.value;
  const saved = await db().$transaction(async (transaction) => {
    const { count } = await transaction.assignment.updateMany({
      where: {
        id: assignmentId,
        ...(expectedVersion === null ? {} : { version: expectedVersion }),
      },
      data: {
        title: next.title,
        dueTimeZone: next.dueTimeZone,
        ...columnsOfPolicy(next.policy),
        version: { increment: 1 },
      },
    });
    if (count === 0) return false;
    await replaceScenario(transaction, assignmentId, next, clock.now());
    await setLesson(transaction, assignmentId, next.lessonSlug);
    await writeAudit(
      transaction,
      viewer,
      {
        classId,
        action: 'assignment-changed',
        subject: `assignment ${assignmentId}`,
        after: { title: next.title, policy: next.policy },
      },
      clock,
    );
    return true;
  });
  if (!saved) {
    return failure(
      'changed-meanwhile',
      'Somebody else has changed this assignment since you opened it. Open it again: nothing of theirs was overwritten.',
    );
  }
  return success({ attemptsUnderWay: (await countChecks(assignmentId)).underWay });
}

async function replaceScenario(
  transaction: Transaction,
  assignmentId: string,
  next: AssignmentInput,
  now: Date,
): Promise<void> {
  const parts = await transaction.assignmentPart.findMany({
    where: { assignmentId },
    ...partsSelect,
  });
  const before = readParts(parts);
  const { placeName, kitId, siteId, scenario: content } = next;
  const data = { placeName, kitId, siteId, content };
  const used = (await transaction.attempt.count({ where: { partId: before.partId } })) > 0;
  let { scenarioVersionId } = before;
  const same =
    JSON.stringify([before.placeName, before.kitId, before.siteId, before.scenario]) ===
    JSON.stringify([placeName, kitId, siteId, content]);
  if (!same && used) {
    const created = await transaction.scenarioVersion.create({
      data: {
        ...data,
        scenarioId: before.scenarioId,
        version: before.scenarioVersion + 1,
        createdAt: now,
      },
      select: { id: true },
    });
    scenarioVersionId = created.id;
  } else if (!same) {
    await transaction.scenarioVersion.update({ where: { id: scenarioVersionId }, data });
  }
  await transaction.assignmentPart.update({
    where: { id: before.partId },
    data: {
      reference: next.lab,
      scenarioVersionId,
      templates: next.templates,
      windowMinutes: next.windowMinutes,
      minutesAllowed: next.minutesAllowed,
    },
  });
}
