import 'server-only';
import { canOwnClass, canSeeClass, canTeachClass, type Viewer } from '../auth/policy';
import type { Scenario } from '../pointing/scenario';
import type { PairTemplate } from '../variants/pair-variant';
import { classAccessSelect, classOfAssignment, mayWithClass } from './access';
import type { AssignmentInput, AssignmentPolicy } from './assignment-input';
import { partsSelect, pickThePair, readAssignmentInput, readParts } from './assignment-parts';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { failure, notFound, success, type Result } from './result';
import { columnsOfPolicy, policyOfColumns, policySelect } from './stored-policy';

export type { AssignmentPolicy, CountingAttempt, FeedbackTime } from './assignment-input';
export { previewAnswerKey, type AnswerKeyPreview } from './answer-key-preview';

export type AssignmentSummary = {
  id: string;
  title: string;
  state: 'draft' | 'published';
  placeName: string;
  /** UTC, ISO 8601, as are all instants here. */
  dueAt: string | null;
  dueTimeZone: string;
  passMark: number;
  publishedAt: string | null;
  attemptsUnderWay: number;
  attemptsSubmitted: number;
};

export type AssignmentDetails = {
  id: string;
  classId: string;
  title: string;
  state: 'draft' | 'published';
  placeName: string;
  scenario: Scenario;
  kitId: string | null;
  siteId: string | null;
  templates: PairTemplate[];
  windowMinutes: number;
  policy: AssignmentPolicy;
  dueTimeZone: string;
  publishedAt: string | null;
  feedbackReleasedAt: string | null;
  attemptsUnderWay: number;
  attemptsSubmitted: number;
  lessonSlug: string | null;
  /** Counts saves; hand it back as `expectedVersion` so that two teachers do not overwrite each other. */
  version: number;
  canEdit: boolean;
};

async function countChecks(assignmentId: string): Promise<{ underWay: number; submitted: number }> {
  const count = (status: 'open' | 'submitted') =>
    db().attempt.count({ where: { assignmentId, mode: 'check', status } });
  const [underWay, submitted] = await Promise.all([count('open'), count('submitted')]);
  return { underWay, submitted };
}

const partsOf = (input: AssignmentInput, scenarioVersionId: string) => [
  {
    position: 1,
    kind: 'lab' as const,
    reference: pickThePair,
    scenarioVersionId,
    templates: input.templates,
    windowMinutes: input.windowMinutes,
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

async function setLesson(transaction: Transaction, assignmentId: string, slug: string | null): Promise<void> {
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
      where: { id: assignmentId, ...(expectedVersion === null ? {} : { version: expectedVersion }) },
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
  const parts = await transaction.assignmentPart.findMany({ where: { assignmentId }, ...partsSelect });
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
      data: { ...data, scenarioId: before.scenarioId, version: before.scenarioVersion + 1, createdAt: now },
      select: { id: true },
    });
    scenarioVersionId = created.id;
  } else if (!same) {
    await transaction.scenarioVersion.update({ where: { id: scenarioVersionId }, data });
  }
  await transaction.assignmentPart.update({
    where: { id: before.partId },
    data: { scenarioVersionId, templates: next.templates, windowMinutes: next.windowMinutes },
  });
}

export async function getAssignment(viewer: Viewer, assignmentId: string): Promise<AssignmentDetails | null> {
  const row = await db().assignment.findUnique({
    where: { id: assignmentId },
    select: {
      id: true,
      classId: true,
      title: true,
      state: true,
      dueTimeZone: true,
      publishedAt: true,
      feedbackReleasedAt: true,
      version: true,
      ...policySelect,
      class: { select: classAccessSelect },
      parts: partsSelect,
    },
  });
  if (row === null || !canSeeClass(viewer, row.class)) return null;
  const { placeName, kitId, siteId, scenario, templates, windowMinutes, lessonSlug } = readParts(row.parts);
  const { underWay, submitted } = await countChecks(assignmentId);
  return {
    id: row.id,
    classId: row.classId,
    title: row.title,
    state: row.state,
    placeName,
    scenario,
    kitId,
    siteId,
    templates,
    windowMinutes,
    policy: policyOfColumns(row),
    dueTimeZone: row.dueTimeZone,
    publishedAt: row.publishedAt?.toISOString() ?? null,
    feedbackReleasedAt: row.feedbackReleasedAt?.toISOString() ?? null,
    attemptsUnderWay: underWay,
    attemptsSubmitted: submitted,
    lessonSlug,
    version: row.version,
    canEdit: canTeachClass(viewer, row.class),
  };
}

export async function listAssignments(viewer: Viewer, classId: string): Promise<AssignmentSummary[] | null> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return null;
  const rows = await db().assignment.findMany({
    where: { classId },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
    select: {
      id: true,
      title: true,
      state: true,
      dueAt: true,
      dueTimeZone: true,
      passMark: true,
      publishedAt: true,
      parts: { where: { kind: 'lab' }, select: { scenarioVersion: { select: { placeName: true } } } },
      attempts: { where: { mode: 'check' }, select: { status: true } },
    },
  });
  return rows.map(({ parts, attempts, dueAt, publishedAt, ...row }) => ({
    ...row,
    placeName: parts[0]?.scenarioVersion?.placeName ?? '',
    dueAt: dueAt?.toISOString() ?? null,
    publishedAt: publishedAt?.toISOString() ?? null,
    attemptsUnderWay: attempts.filter(({ status }) => status === 'open').length,
    attemptsSubmitted: attempts.filter(({ status }) => status === 'submitted').length,
  }));
}

/** Publishing again changes nothing. */
export async function publishAssignment(
  viewer: Viewer,
  assignmentId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return notFound();
  const now = clock.now();
  const row = await db().assignment.findUnique({
    where: { id: assignmentId },
    select: { dueAt: true, state: true },
  });
  if (row === null) return notFound();
  if (row.state === 'published') return success(null);
  if (row.dueAt !== null && row.dueAt <= now) {
    return failure('due-in-the-past', 'The due time is over already. Set a later one, then publish.', 'dueAt');
  }
  await db().assignment.update({
    where: { id: assignmentId },
    data: { state: 'published', publishedAt: now, version: { increment: 1 } },
  });
  return success(null);
}

/** Shows results that wait for the teacher's word. There is no way back: what was seen was seen. */
export async function releaseFeedback(
  viewer: Viewer,
  assignmentId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return notFound();
  await db().$transaction(async (transaction) => {
    const { count } = await transaction.assignment.updateMany({
      where: { id: assignmentId, feedbackReleasedAt: null },
      data: { feedbackReleasedAt: clock.now() },
    });
    const subject = `assignment ${assignmentId}`;
    if (count > 0) await writeAudit(transaction, viewer, { classId, action: 'feedback-released', subject }, clock);
  });
  return success(null);
}

/** Teachers may take back a draft; what students have worked on only the owner deletes. */
export async function deleteAssignment(
  viewer: Viewer,
  assignmentId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return notFound();
  const attempts = await db().attempt.count({ where: { assignmentId } });
  if (attempts > 0 && !(await mayWithClass(viewer, classId, canOwnClass))) {
    return failure('owner-only', 'Students have worked on this: only the owner of the class can delete it.');
  }
  await db().$transaction(async (transaction) => {
    const parts = await transaction.assignmentPart.findMany({ where: { assignmentId }, ...partsSelect });
    const { scenarioId } = readParts(parts);
    await transaction.assignment.delete({ where: { id: assignmentId } });
    await transaction.scenario.delete({ where: { id: scenarioId } });
    const subject = `assignment ${assignmentId}`;
    await writeAudit(transaction, viewer, { classId, action: 'assignment-deleted', subject }, clock);
  });
  return success(null);
}
