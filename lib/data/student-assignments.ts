import 'server-only';
import type { Viewer } from '../auth/policy';
import type { LessonSlug } from '../course/lessons';
import type { Skill } from '../course/skills';
import type { GradebookState } from '../grading/gradebook-state';
import { skillsOfLabs } from '../mastery/skills-of-labs';
import { readParts, partsSelect } from './assignment-parts';
import { reckon } from './assignment-reckoning';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { extendedDue, extensionsOf } from './due-times';
import { signedOffSkills } from './observations';
import { policyOfColumns, policySelect } from './stored-policy';
import { partAttemptSelect, readAttempt, studentPart, type StudentPart } from './student-part';

export type { StudentPart } from './student-part';

export type StudentAssignment = {
  assignmentId: string;
  title: string;
  placeName: string;
  /** The student's own due time: with any extension. UTC, ISO 8601. */
  dueAt: string | null;
  dueTimeZone: string;
  /** Of the whole. */
  state: GradebookState;
  /** Of the parts that are marked; null while none is or the feedback is withheld. */
  mark: number | null;
  /** Set by the teacher over what the parts came to. */
  markByHand: boolean;
  passMark: number;
  /** A safety gate was failed in what counts; false while the feedback is withheld. */
  gateFailed: boolean;
  feedbackVisible: boolean;
  /** Slugs of the lessons to read. */
  lessons: LessonSlug[];
  /** Skills that the teacher wants to see at the real telescope and has not signed off yet. */
  toSignOff: Skill[];
  /** What is marked, in order. */
  parts: StudentPart[];
};

const listSelect = (studentId: string) => ({
  id: true,
  title: true,
  needsSignOff: true,
  dueTimeZone: true,
  feedbackReleasedAt: true,
  ...policySelect,
  parts: partsSelect,
  extensions: extensionsOf(studentId),
  overrides: { where: { studentId }, select: { mark: true, excused: true } },
  attempts: {
    where: { studentId, mode: 'check' as const },
    orderBy: { number: 'asc' as const },
    select: partAttemptSelect,
  },
});

const loadAll = (classId: string, studentId: string) =>
  db().assignment.findMany({
    where: { classId, state: 'published' },
    orderBy: [{ dueAt: 'asc' }, { publishedAt: 'asc' }],
    select: listSelect(studentId),
  });
type AssignmentRow = Awaited<ReturnType<typeof loadAll>>[number];

/** What the viewing student has to do and has done; empty for everybody else. */
export async function listStudentAssignments(
  viewer: Viewer,
  clock: Clock = systemClock,
): Promise<StudentAssignment[]> {
  if (viewer.kind !== 'student') return [];
  const { studentId, classId } = viewer;
  const [rows, accommodation] = await Promise.all([
    loadAll(classId, studentId),
    db().accommodation.findUnique({ where: { studentId }, select: { extraAttempts: true } }),
  ]);
  const now = clock.now();
  const signedOff = rows.some(({ needsSignOff }) => needsSignOff)
    ? ((await signedOffSkills(classId)).get(studentId) ?? new Set())
    : new Set();
  return rows.map((row) =>
    summary(row, {
      extraAttempts: accommodation?.extraAttempts ?? 0,
      isSignedOff: (skill) => signedOff.has(skill),
      now,
    }),
  );
}

function summary(
  row: AssignmentRow,
  {
    extraAttempts,
    isSignedOff,
    now,
  }: { extraAttempts: number; isSignedOff: (skill: Skill) => boolean; now: Date },
): StudentAssignment {
  const current = policyOfColumns(row);
  const { parts, lessons, placeName } = readParts(row.parts);
  const toSignOff = row.needsSignOff
    ? skillsOfLabs(parts.map(({ lab }) => lab)).filter((skill) => !isSignedOff(skill))
    : [];
  const extension = extendedDue(row.extensions);
  const attempts = row.attempts.map(readAttempt);
  const open = attempts.find(({ status }) => status === 'open');
  const dueAt = extension?.toISOString() ?? (open?.policy ?? current).dueAt;
  const [word] = row.overrides;
  const reckoning = reckon({
    attempts,
    current,
    extension,
    word,
    now,
    parts: parts.map((part) => ({ ...part, id: part.partId })),
    feedbackReleasedAt: row.feedbackReleasedAt,
    needsSignOff: toSignOff.length > 0,
  });
  const { feedbackVisible, mark, gateFailed, overridden, passMark } = reckoning;
  const attemptsAllowed =
    current.attemptsAllowed === null ? null : current.attemptsAllowed + extraAttempts;
  return {
    assignmentId: row.id,
    title: row.title,
    placeName,
    dueAt,
    dueTimeZone: row.dueTimeZone,
    state: reckoning.stateToStudent,
    mark: feedbackVisible ? mark : null,
    markByHand: overridden,
    gateFailed: feedbackVisible && gateFailed,
    passMark,
    feedbackVisible,
    lessons,
    toSignOff,
    parts: reckoning.parts.map((part) => studentPart(part, attemptsAllowed)),
  };
}
