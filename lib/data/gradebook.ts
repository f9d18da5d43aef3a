import type { Viewer } from '../auth/policy';
import type { GradebookState } from '../grading/gradebook-state';
import type { PairTemplate } from '../variants/pair-variant';
import type { AttemptMode } from './attempts';
import type { Clock } from './clock';
import type { Result } from './result';

export type { GradebookState } from '../grading/gradebook-state';

export type GradebookCell = {
  studentId: string;
  assignmentId: string;
  state: GradebookState;
  /** What counts: after late penalty, counting rule and override; not rounded. */
  mark: number | null;
  /** Before the late penalty, of the attempt that counts; null for an average or an override alone. */
  raw: number | null;
  /** Share that lateness took from the attempt that counts, 0–1. */
  latePenalty: number | null;
  overridden: boolean;
  attempts: number;
  lastAttemptId: string | null;
};
export type Gradebook = {
  students: { id: string; displayName: string; cardNumber: number }[];
  assignments: { id: string; title: string; dueAt: string | null; passMark: number }[];
  cells: GradebookCell[];
};
export type StudentRecord = {
  student: { id: string; displayName: string; cardNumber: number; classId: string; className: string };
  attempts: {
    attemptId: string;
    assignmentId: string | null;
    assignmentTitle: string | null;
    mode: AttemptMode;
    number: number;
    template: PairTemplate;
    /** null while it is open. */
    submittedAt: string | null;
    mark: number | null;
    countedMark: number | null;
    late: boolean;
  }[];
};

export async function getGradebook(viewer: Viewer, classId: string, clock?: Clock): Promise<Gradebook | null> {
  throw new Error('not written yet');
}
export async function getStudentRecord(viewer: Viewer, studentId: string): Promise<StudentRecord | null> {
  throw new Error('not written yet');
}
/** A mark of null takes the override back. The note is required and audited. */
export async function overrideMark(
  viewer: Viewer,
  input: { studentId: string; assignmentId: string; mark: number | null; note: string },
  clock?: Clock,
): Promise<Result<null>> {
  throw new Error('not written yet');
}
/** `excused: false` takes it back. */
export async function excuse(
  viewer: Viewer,
  input: { studentId: string; assignmentId: string; note: string; excused?: boolean },
  clock?: Clock,
): Promise<Result<null>> {
  throw new Error('not written yet');
}
/** `dueAt` is a UTC instant; null takes the extension back. */
export async function extendDue(
  viewer: Viewer,
  input: { studentId: string; assignmentId: string; dueAt: string | null; note: string },
  clock?: Clock,
): Promise<Result<null>> {
  throw new Error('not written yet');
}
export async function exportGradebookCsv(
  viewer: Viewer,
  classId: string,
  clock?: Clock,
): Promise<string | null> {
  throw new Error('not written yet');
}
