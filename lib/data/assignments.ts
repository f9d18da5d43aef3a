import 'server-only';
import { canSeeClass, canTeachClass, type Viewer } from '../auth/policy';
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
  lab: Lab;
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
  lab: Lab;
  title: string;
  state: 'draft' | 'published';
  placeName: string;
  scenario: Scenario;
  kitId: string | null;
  siteId: string | null;
  /** Kinds of task of the lab. */
  templates: string[];
  windowMinutes: number;
  /** null: time does not count. */
  minutesAllowed: number | null;
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
      ...policySelect,
      class: { select: classAccessSelect },
      parts: partsSelect,
    },
  });
  if (row === null || !canSeeClass(viewer, row.class)) return null;
  const { lab, placeName, kitId, siteId, scenario, templates, lessonSlug, ...part } = readParts(
    row.parts,
  );
  const { underWay, submitted } = await countChecks(assignmentId);
  return {
    id: row.id,
    classId: row.classId,
    lab,
    title: row.title,
    state: row.state,
    placeName,
    scenario,
    kitId,
    siteId,
    templates,
    windowMinutes: part.windowMinutes,
    minutesAllowed: part.minutesAllowed,
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
      parts: {
        where: { kind: 'lab' },
        select: { reference: true, scenarioVersion: { select: { placeName: true } } },
      },
      attempts: { where: { mode: 'check' }, select: { status: true } },
    },
  });
  return rows.map(({ parts, attempts, dueAt, publishedAt, ...row }) => ({
    ...row,
    lab: labTaskOf(parts[0]?.reference ?? '').lab,
    placeName: parts[0]?.scenarioVersion?.placeName ?? '',
    dueAt: dueAt?.toISOString() ?? null,
    publishedAt: publishedAt?.toISOString() ?? null,
    attemptsUnderWay: attempts.filter(({ status }) => status === 'open').length,
    attemptsSubmitted: attempts.filter(({ status }) => status === 'submitted').length,
  }));
}
