import type { Viewer } from '../auth/policy';
import type { AnswerKey, AnswerKeyPair } from '../pointing/answer-key';
import type { Scenario } from '../pointing/scenario';
import type { SkyFrame } from '../sky/sky-frame';
import type { PairTemplate } from '../variants/pair-variant';
import type { AssignmentPolicy } from './assignment-input';
import type { Clock } from './clock';
import type { Result } from './result';

export type { AssignmentPolicy, CountingAttempt, FeedbackTime } from './assignment-input';

export type AssignmentSummary = {
  id: string;
  title: string;
  state: 'draft' | 'published';
  placeName: string;
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

export type AnswerKeyPreview = {
  key: AnswerKey;
  frame: SkyFrame;
  /** For each template of the assignment, the best pair of one sample variant; null where none is usable. */
  variants: { template: PairTemplate; sample: AnswerKeyPair | null }[];
};

/** `input` is read with assignmentInputSchema. */
export async function createAssignment(
  viewer: Viewer,
  classId: string,
  input: unknown,
  clock?: Clock,
): Promise<Result<{ assignmentId: string }>> {
  throw new Error('not written yet');
}
export async function updateAssignment(
  viewer: Viewer,
  assignmentId: string,
  input: unknown,
  expectedVersion?: number | null,
  clock?: Clock,
): Promise<Result<{ attemptsUnderWay: number }>> {
  throw new Error('not written yet');
}
export async function getAssignment(viewer: Viewer, assignmentId: string): Promise<AssignmentDetails | null> {
  throw new Error('not written yet');
}
export async function listAssignments(viewer: Viewer, classId: string): Promise<AssignmentSummary[] | null> {
  throw new Error('not written yet');
}
export async function previewAnswerKey(viewer: Viewer, assignmentId: string): Promise<AnswerKeyPreview | null> {
  throw new Error('not written yet');
}
export async function publishAssignment(
  viewer: Viewer,
  assignmentId: string,
  clock?: Clock,
): Promise<Result<null>> {
  throw new Error('not written yet');
}
export async function releaseFeedback(
  viewer: Viewer,
  assignmentId: string,
  clock?: Clock,
): Promise<Result<null>> {
  throw new Error('not written yet');
}
export async function deleteAssignment(
  viewer: Viewer,
  assignmentId: string,
  clock?: Clock,
): Promise<Result<null>> {
  throw new Error('not written yet');
}
