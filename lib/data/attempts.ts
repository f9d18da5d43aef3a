import type { Viewer } from '../auth/policy';
import type { PairDraft, PairResult } from '../grading/pair-submission';
import type { GradebookState } from '../grading/gradebook-state';
import type { PairVariant } from '../variants/pair-variant';
import type { Clock } from './clock';
import type { Result } from './result';

export type AttemptMode = 'practice' | 'check';
export type StudentAssignment = {
  assignmentId: string;
  title: string;
  placeName: string;
  /** The student's own due time: with any extension. UTC, ISO 8601. */
  dueAt: string | null;
  dueTimeZone: string;
  state: GradebookState;
  /** null while there is none or the feedback is withheld. */
  mark: number | null;
  passMark: number;
  attemptsUsed: number;
  /** With the student's extra attempts; null: no limit. */
  attemptsAllowed: number | null;
  openAttemptId: string | null;
  lastSubmittedAttemptId: string | null;
  feedbackVisible: boolean;
  lessonSlug: string | null;
};
export type OpenAttempt = {
  id: string;
  mode: AttemptMode;
  title: string;
  placeName: string;
  kitId: string | null;
  variant: PairVariant;
  draft: PairDraft;
  /** The sequence number that the next saved draft carries. */
  nextSequence: number;
  attemptNumber: number;
  attemptsAllowed: number | null;
  dueAt: string | null;
  dueTimeZone: string;
  assignmentId: string | null;
};
export type SubmittedAttempt = { attemptId: string; result: PairResult | null; late: boolean };
export type AttemptResult = {
  id: string;
  mode: AttemptMode;
  title: string;
  placeName: string;
  kitId: string | null;
  assignmentId: string | null;
  studentId: string;
  studentName: string;
  classId: string;
  attemptNumber: number;
  submittedAt: string;
  late: boolean;
  /** The share of the mark that lateness took, 0–1; 0 in practice. */
  latePenalty: number;
  /** Raw mark less the late penalty; null when the result is withheld. */
  mark: number | null;
  passMark: number | null;
  result: PairResult | null;
  variant: PairVariant;
  /** 'now', a UTC instant, or 'when-released'. */
  feedbackVisibleFrom: string;
};

export async function listStudentAssignments(viewer: Viewer, clock?: Clock): Promise<StudentAssignment[]> {
  throw new Error('not written yet');
}
/** Resumes the open attempt where there is one. */
export async function startAttempt(
  viewer: Viewer,
  assignmentId: string,
  clock?: Clock,
): Promise<Result<{ attemptId: string }>> {
  throw new Error('not written yet');
}
/** A new variant each time; never counts. */
export async function startPractice(
  viewer: Viewer,
  input: { kitId?: string; assignmentId?: string },
  clock?: Clock,
): Promise<Result<{ attemptId: string }>> {
  throw new Error('not written yet');
}
export async function getOpenAttempt(viewer: Viewer, attemptId: string): Promise<OpenAttempt | null> {
  throw new Error('not written yet');
}
/** `input`: { sequence, draft }. Saving the same again is harmless; an older sequence is refused. */
export async function saveDraft(
  viewer: Viewer,
  attemptId: string,
  input: unknown,
  clock?: Clock,
): Promise<Result<{ sequence: number }>> {
  throw new Error('not written yet');
}
/** `input`: { submission, idempotencyKey }, nothing else. */
export async function submitAttempt(
  viewer: Viewer,
  attemptId: string,
  input: unknown,
  clock?: Clock,
): Promise<Result<SubmittedAttempt>> {
  throw new Error('not written yet');
}
export async function getAttemptResult(
  viewer: Viewer,
  attemptId: string,
  clock?: Clock,
): Promise<AttemptResult | null> {
  throw new Error('not written yet');
}
