import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import { afterPenalty } from '../grading/counted-mark';
import type { Lab } from '../variants/labs';
import { classAccessSelect } from './access';
import { standingOf, standingSelect } from './attempt-standing';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { labTaskOf } from './lab-tasks/lab-tasks';

export type StudentRecord = {
  student: {
    id: string;
    displayName: string;
    cardNumber: number;
    classId: string;
    className: string;
  };
  attempts: {
    attemptId: string;
    assignmentId: string | null;
    assignmentTitle: string | null;
    mode: 'practice' | 'check';
    number: number;
    lab: Lab;
    /** The kind of task of that lab. */
    template: string;
    /** UTC, ISO 8601; null while it is open. */
    submittedAt: string | null;
    /** Before lateness. */
    mark: number | null;
    /** After lateness; null in practice, which never counts. */
    countedMark: number | null;
    late: boolean;
  }[];
};

/** All attempts of one student, latest first, for the class's teachers. */
export async function getStudentRecord(
  viewer: Viewer,
  studentId: string,
  clock: Clock = systemClock,
): Promise<StudentRecord | null> {
  const student = await db().student.findUnique({
    where: { id: studentId },
    select: {
      id: true,
      displayName: true,
      cardNumber: true,
      class: { select: { ...classAccessSelect, name: true } },
      attempts: {
        orderBy: [{ startedAt: 'desc' }, { number: 'desc' }],
        select: {
          id: true,
          assignmentId: true,
          number: true,
          lab: true,
          template: true,
          marks: { orderBy: { graderVersion: 'desc' }, take: 1, select: { total: true } },
          ...standingSelect,
          assignment: { select: { ...standingSelect.assignment.select, title: true } },
        },
      },
    },
  });
  if (student === null || !canSeeClass(viewer, student.class)) return null;
  const now = clock.now();
  return {
    student: {
      id: student.id,
      displayName: student.displayName,
      cardNumber: student.cardNumber,
      classId: student.class.id,
      className: student.class.name,
    },
    attempts: student.attempts.map((attempt) => {
      const standing = standingOf(attempt, now);
      const mark = attempt.marks[0]?.total ?? null;
      const counts = attempt.mode === 'check' && mark !== null;
      return {
        attemptId: attempt.id,
        assignmentId: attempt.assignmentId,
        assignmentTitle: attempt.assignment?.title ?? null,
        mode: attempt.mode,
        number: attempt.number,
        lab: labTaskOf(attempt.lab).lab,
        template: attempt.template,
        submittedAt: attempt.submittedAt?.toISOString() ?? null,
        mark,
        countedMark: counts ? afterPenalty({ raw: mark, latePenalty: standing.latePenalty }) : null,
        late: attempt.submittedAt !== null && standing.late,
      };
    }),
  };
}
