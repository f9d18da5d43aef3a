import type { StudentAssignment } from '@/lib/data/attempts';

/** What a student can do with an assignment now. */
export type NextStep =
  | { kind: 'go-on'; attemptId: string }
  | { kind: 'start'; again: boolean }
  | { kind: 'no-attempts-left' }
  | { kind: 'too-late' }
  | { kind: 'excused' };

type Standing = Pick<
  StudentAssignment,
  'state' | 'dueAt' | 'attemptsUsed' | 'attemptsAllowed' | 'openAttemptId'
>;

/** An open attempt may always be finished; a new one only while one is left and the time is not over. */
export function nextStepOf(assignment: Standing, now: Date): NextStep {
  if (assignment.state === 'excused') return { kind: 'excused' };
  if (assignment.openAttemptId !== null) {
    return { kind: 'go-on', attemptId: assignment.openAttemptId };
  }
  const { attemptsAllowed, attemptsUsed, dueAt } = assignment;
  if (attemptsAllowed !== null && attemptsUsed >= attemptsAllowed) {
    return { kind: 'no-attempts-left' };
  }
  if (dueAt !== null && now.getTime() > Date.parse(dueAt)) return { kind: 'too-late' };
  return { kind: 'start', again: attemptsUsed > 0 };
}

/** Still wanted from the student: something is open, or can be started and is not passed yet. */
export function isToDo(assignment: Standing, now: Date): boolean {
  const step = nextStepOf(assignment, now);
  if (step.kind === 'go-on') return true;
  return (
    step.kind === 'start' &&
    ['not-started', 'in-progress', 'missing', 'not-yet'].includes(assignment.state)
  );
}

/** "1 of 3 attempts used"; for a student, how many are left is what counts. */
export function attemptsInWords({ attemptsAllowed, attemptsUsed }: Standing): string {
  if (attemptsAllowed === null) return 'As many attempts as you like';
  const left = Math.max(0, attemptsAllowed - attemptsUsed);
  if (attemptsUsed === 0)
    return attemptsAllowed === 1 ? 'One attempt' : `${attemptsAllowed} attempts`;
  return left === 0 ? 'No attempt left' : `${left} of ${attemptsAllowed} attempts left`;
}
