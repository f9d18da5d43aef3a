import type { StudentAssignment, StudentPart } from '@/lib/data/attempts';

/** What a student can do with a part of an assignment now. */
export type NextStep =
  | { kind: 'go-on'; attemptId: string }
  | { kind: 'start'; again: boolean }
  | { kind: 'no-attempts-left' }
  | { kind: 'too-late' }
  | { kind: 'excused' };

type Standing = Pick<StudentPart, 'state' | 'attemptsUsed' | 'attemptsAllowed' | 'openAttemptId'> &
  Pick<StudentAssignment, 'dueAt'>;

/** An open attempt may always be finished; a new one only while one is left and the time is not over. */
export function nextStepOf(standing: Standing, now: Date): NextStep {
  if (standing.state === 'excused') return { kind: 'excused' };
  if (standing.openAttemptId !== null) {
    return { kind: 'go-on', attemptId: standing.openAttemptId };
  }
  const { attemptsAllowed, attemptsUsed, dueAt } = standing;
  if (attemptsAllowed !== null && attemptsUsed >= attemptsAllowed) {
    return { kind: 'no-attempts-left' };
  }
  if (dueAt !== null && now.getTime() > Date.parse(dueAt)) return { kind: 'too-late' };
  return { kind: 'start', again: attemptsUsed > 0 };
}

/** Still wanted from the student: something is open, or can be started and is not passed yet. */
export function isToDo(standing: Standing, now: Date): boolean {
  const step = nextStepOf(standing, now);
  if (step.kind === 'go-on') return true;
  return (
    step.kind === 'start' &&
    ['not-started', 'in-progress', 'missing', 'not-yet', 'returned'].includes(standing.state)
  );
}

/** A part with the due time that it shares with the others. */
export const standingsOf = ({ parts, dueAt }: Pick<StudentAssignment, 'parts' | 'dueAt'>) =>
  parts.map((part) => ({ ...part, dueAt }));

/** Some part is still wanted; none once the teacher has set a mark that passes. */
export const hasToDo = (
  assignment: Pick<StudentAssignment, 'parts' | 'dueAt' | 'markByHand' | 'state'>,
  now: Date,
): boolean => {
  if (assignment.markByHand && assignment.state === 'complete')
    return assignment.parts.some(({ openAttemptId }) => openAttemptId !== null);
  return standingsOf(assignment).some((standing) => isToDo(standing, now));
};

/** "1 of 3 attempts used"; for a student, how many are left is what counts. */
export function attemptsInWords({ attemptsAllowed, attemptsUsed }: Standing): string {
  if (attemptsAllowed === null) return 'As many attempts as you like';
  const left = Math.max(0, attemptsAllowed - attemptsUsed);
  if (attemptsUsed === 0)
    return attemptsAllowed === 1 ? 'One attempt' : `${attemptsAllowed} attempts`;
  return left === 0 ? 'No attempt left' : `${left} of ${attemptsAllowed} attempts left`;
}
