import 'server-only';
import { canSeeClass, canTeachClass, type Viewer } from '../auth/policy';
import type { LessonSlug } from '../course/lessons';
import type { Scenario } from '../pointing/scenario';
import type { Lab } from '../variants/labs';
import { classAccessSelect, mayWithClass } from './access';
import type { AssignmentPolicy } from './assignment-input';
import { partsSelect, readParts } from './assignment-parts';
import { countChecks } from './count-checks';
import { labTaskOf } from './lab-tasks/lab-tasks';
import { db } from './db';
import { policyOfColumns, policySelect } from './stored-policy';

export type { AssignmentPolicy, CountingAttempt, FeedbackTime } from './assignment-input';
export { previewAnswerKey, type AnswerKeyPreview } from './answer-key-preview';
export { createAssignment, updateAssignment } from './assignment-saving';
export { deleteAssignment, publishAssignment, releaseFeedback } from './assignment-steps';

export type AssignmentSummary = {
  id: string;
  /** Of its marked parts, in order. */
  labs: Lab[];
  /** How many lessons are to be read. */
  lessonCount: number;
  title: string;
  state: 'draft' | 'published';
  placeName: string;
  /** UTC, ISO 8601, as are all instants here. */
  dueAt: string | null;
  dueTimeZone: string;
  passMark: number;
  weight: number;
  publishedAt: string | null;
  attemptsUnderWay: number;
  attemptsSubmitted: number;
};

/** One marked part of an assignment. */
export type AssignmentPartDetails = {
  id: string;
  lab: Lab;
  /** Kinds of task of the lab. */
  templates: string[];
  windowMinutes: number;
  /** null: time does not count. */
  minutesAllowed: number | null;
  /** Beside the other parts. */
  weight: number;
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
  parts: AssignmentPartDetails[];
  /** Slugs of the lessons to read, in order. */
  lessons: LessonSlug[];
  /** In a student's mean of all assignments. */
  weight: number;
  needsSignOff: boolean;
  policy: AssignmentPolicy;
  dueTimeZone: string;
  publishedAt: string | null;
  feedbackReleasedAt: string | null;
  attemptsUnderWay: number;
  attemptsSubmitted: number;
  /** Counts saves; hand it back as `expectedVersion` so that two teachers do not overwrite each other. */
  version: number;
  canEdit: boolean;
};

export async function getAssignment(
  viewer: Viewer,
  assignmentId: string,
): Promise<AssignmentDetails | null> {
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
      weight: true,
      needsSignOff: true,
      ...policySelect,
      class: { select: classAccessSelect },
      parts: partsSelect,
    },
  });
  if (row === null || !canSeeClass(viewer, row.class)) return null;
  const { parts, lessons, placeName, kitId, siteId, scenario } = readParts(row.parts);
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
    parts: parts.map(({ partId, ...part }) => ({ id: partId, ...part })),
    lessons,
    weight: row.weight,
    needsSignOff: row.needsSignOff,
    policy: policyOfColumns(row),
    dueTimeZone: row.dueTimeZone,
    publishedAt: row.publishedAt?.toISOString() ?? null,
    feedbackReleasedAt: row.feedbackReleasedAt?.toISOString() ?? null,
    attemptsUnderWay: underWay,
    attemptsSubmitted: submitted,
    version: row.version,
    canEdit: canTeachClass(viewer, row.class),
  };
}

export async function listAssignments(
  viewer: Viewer,
  classId: string,
): Promise<AssignmentSummary[] | null> {
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
      weight: true,
      parts: {
        orderBy: { position: 'asc' },
        select: { kind: true, reference: true, scenarioVersion: { select: { placeName: true } } },
      },
    },
  });
  const counts = await db().attempt.groupBy({
    by: ['assignmentId', 'status'],
    where: { mode: 'check', assignment: { classId } },
    _count: { _all: true },
  });
  const countOf = (id: string, status: 'open' | 'submitted'): number =>
    counts.find((one) => one.assignmentId === id && one.status === status)?._count._all ?? 0;
  return rows.map(({ parts, dueAt, publishedAt, ...row }) => ({
    ...row,
    labs: parts.flatMap(({ kind, reference }) =>
      kind === 'lab' ? [labTaskOf(reference).lab] : [],
    ),
    lessonCount: parts.filter(({ kind }) => kind === 'lesson').length,
    placeName: parts.find(({ kind }) => kind === 'lab')?.scenarioVersion?.placeName ?? '',
    dueAt: dueAt?.toISOString() ?? null,
    publishedAt: publishedAt?.toISOString() ?? null,
    attemptsUnderWay: countOf(row.id, 'open'),
    attemptsSubmitted: countOf(row.id, 'submitted'),
  }));
}
