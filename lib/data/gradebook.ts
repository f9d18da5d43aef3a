import 'server-only';
import { canSeeClass, canTakeFromClass, type Viewer } from '../auth/policy';
import { studentMean } from '../grading/assignment-mark';
import type { CountingRule } from '../grading/counted-mark';
import { weightedMean } from '../grading/weighted-mean';
import type { Skill } from '../course/skills';
import { skillsOfLabs } from '../mastery/skills-of-labs';
import type { Lab } from '../variants/labs';
import { classOfStudent, mayWithClass } from './access';
import { systemClock, type Clock } from './clock';
import { cellOf, labOfPart, type GradebookCell } from './gradebook-cell';
import { gradebookCsv } from './gradebook-csv';
import { groupedBy } from './grouped-by';
import { mapInTurns } from './in-turns';
import { signedOffSkills } from './observations';
import { loadGradebookRows, type GradebookPart } from './gradebook-rows';

export type { GradebookState } from '../grading/gradebook-state';
export type { GradebookCell } from './gradebook-cell';
export { excuse, extendDue, overrideMark } from './gradebook-decisions';
export { getStudentRecord, type StudentRecord } from './student-record';

export type GradebookStudent = {
  id: string;
  displayName: string;
  cardNumber: number;
  /** Has left the class: the work is kept, and nothing is asked any more. */
  left: boolean;
  groupIds: string[];
  /** Over the assignments by their weights; null while there is nothing to take it of. */
  mean: number | null;
};
export type GradebookAssignment = {
  id: string;
  title: string;
  dueAt: string | null;
  passMark: number;
  counting: CountingRule;
  weight: number;
  needsSignOff: boolean;
  parts: { partId: string; lab: Lab; weight: number }[];
  /** Of the class as it is now: complete and not excused. */
  mean: number | null;
};
export type Gradebook = {
  /** Who has left stands last. */
  students: GradebookStudent[];
  assignments: GradebookAssignment[];
  groups: { id: string; name: string }[];
  /** Students in their order, and of each all assignments in theirs. */
  cells: GradebookCell[];
};

/** Students × published assignments. */
export async function getGradebook(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<Gradebook | null> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return null;
  return readGradebook(classId, {}, clock.now());
}

/** The row of one student, or with an assignment the one cell; the class's means are of that row only. */
export async function getStudentGradebook(
  viewer: Viewer,
  { studentId, assignmentId }: { studentId: string; assignmentId?: string },
  clock: Clock = systemClock,
): Promise<Gradebook | null> {
  const classId = await classOfStudent(viewer, studentId, canSeeClass);
  if (classId === null) return null;
  return readGradebook(classId, { studentId, assignmentId }, clock.now());
}

async function readGradebook(classId: string, only: GradebookPart, now: Date): Promise<Gradebook> {
  const { students, assignments, attempts, groups } = await loadGradebookRows(classId, only);
  const attemptsOf = groupedBy(
    attempts,
    (attempt) => `${attempt.studentId} ${attempt.assignmentId}`,
  );
  const ordered = [
    ...students.filter(({ leftAt }) => leftAt === null),
    ...students.filter(({ leftAt }) => leftAt !== null),
  ];
  const signedOff = assignments.some(({ needsSignOff }) => needsSignOff)
    ? await signedOffSkills(classId)
    : new Map<string, Set<Skill>>();
  const asked = assignments.map(({ needsSignOff, parts }) =>
    needsSignOff ? skillsOfLabs(parts.map(labOfPart)) : [],
  );
  const rows = await mapInTurns(ordered, (student) => ({
    student,
    cells: assignments.map((assignment, index) =>
      cellOf(student, assignment, attemptsOf.get(`${student.id} ${assignment.id}`) ?? [], {
        now,
        toSignOff: (asked[index] ?? []).filter(
          (skill) => signedOff.get(student.id)?.has(skill) !== true,
        ),
      }),
    ),
  }));
  const here = rows.filter(({ student }) => student.leftAt === null);
  return {
    students: rows.map(({ student, cells }) => ({
      id: student.id,
      displayName: student.displayName,
      cardNumber: student.cardNumber,
      left: student.leftAt !== null,
      groupIds: student.groups.map(({ groupId }) => groupId),
      mean: studentMean(
        cells.map((cell, index) => ({ ...cell, weight: assignments[index]?.weight ?? 0 })),
      ),
    })),
    assignments: assignments.map((assignment, index) => ({
      id: assignment.id,
      title: assignment.title,
      dueAt: assignment.dueAt?.toISOString() ?? null,
      passMark: assignment.passMark,
      counting: assignment.counting,
      weight: assignment.weight,
      needsSignOff: assignment.needsSignOff,
      parts:
        here[0]?.cells[index]?.parts.map(({ partId, lab, weight }) => ({ partId, lab, weight })) ??
        [],
      mean: weightedMean(
        here.flatMap(({ cells }) => {
          const cell = cells[index];
          return cell?.complete === true ? [{ ...cell, weight: 1 }] : [];
        }),
      ),
    })),
    groups,
    cells: rows.flatMap(({ cells }) => cells),
  };
}

/** The gradebook as a spreadsheet, for the class's owner and teachers. */
export async function exportGradebookCsv(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<string | null> {
  if (!(await mayWithClass(viewer, classId, canTakeFromClass))) return null;
  const gradebook = await getGradebook(viewer, classId, clock);
  return gradebook === null ? null : gradebookCsv(gradebook);
}
