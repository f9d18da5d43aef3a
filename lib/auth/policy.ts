/** Who is asking. Every function in lib/data takes one first. */
export type Viewer =
  | { kind: 'anonymous' }
  | { kind: 'teacher'; teacherId: string; displayName: string }
  | { kind: 'student'; studentId: string; classId: string; displayName: string }
  /** A substitute teacher with a link instead of an account: reads one class for a day. */
  | { kind: 'cover'; coverId: string; classId: string; displayName: string };

/** What each role in a class may do: an observer reads, a teacher works, the owner also disposes. */
export type ClassRole = 'owner' | 'teacher' | 'observer';

/** A class as far as permission goes. */
export type ClassAccess = {
  id: string;
  members: readonly { teacherId: string; role: ClassRole }[];
  /** Set: nothing in it changes any more. As the column gives it, so that a row can be asked about. */
  archivedAt: Date | null;
};
type StudentAccess = { id: string; class: ClassAccess };
type AttemptAccess = { student: StudentAccess };
type AssignmentAccess = { class: ClassAccess; state: 'draft' | 'published' };

/** The viewer's role in the class; null for everybody who is not one of its teachers. */
export function roleIn(viewer: Viewer, schoolClass: ClassAccess): ClassRole | null {
  if (viewer.kind !== 'teacher') return null;
  return schoolClass.members.find(({ teacherId }) => teacherId === viewer.teacherId)?.role ?? null;
}

/** A substitute looks into the class of the link; where it is archived there is nothing to cover. */
const covers = (viewer: Viewer, schoolClass: ClassAccess): boolean =>
  viewer.kind === 'cover' && viewer.classId === schoolClass.id && schoolClass.archivedAt === null;

/** Roster, gradebook, attempts and assignments, to read. */
export const canSeeClass = (viewer: Viewer, schoolClass: ClassAccess): boolean =>
  roleIn(viewer, schoolClass) !== null || covers(viewer, schoolClass);

/**
 * What teachers write to each other or to a student, and answer keys: those who have a role in the class,
 * looking on or not, but no substitute for a day.
 */
export const canReadNotes = (viewer: Viewer, schoolClass: ClassAccess): boolean =>
  roleIn(viewer, schoolClass) !== null;

/** Accommodations, what is kept of a student, files to take away: to read, archived or not. */
export const canTakeFromClass = (viewer: Viewer, schoolClass: ClassAccess): boolean => {
  const role = roleIn(viewer, schoolClass);
  return role === 'owner' || role === 'teacher';
};

/** Roster, cards, groups, assignments, marks and settings, to change: never once it is archived. */
export const canTeachClass = (viewer: Viewer, schoolClass: ClassAccess): boolean =>
  canTakeFromClass(viewer, schoolClass) && schoolClass.archivedAt === null;

/** New words for one student who cannot get in. */
export const canIssueCard = (viewer: Viewer, schoolClass: ClassAccess): boolean =>
  canTeachClass(viewer, schoolClass) || covers(viewer, schoolClass);

/** Archiving, taking back and deleting: what becomes of the class as a whole. */
export const canOwnClass = (viewer: Viewer, schoolClass: ClassAccess): boolean =>
  roleIn(viewer, schoolClass) === 'owner';

/** The retention date, and who else teaches here: the owner, until the class is archived. */
export const canRunClass = (viewer: Viewer, schoolClass: ClassAccess): boolean =>
  canOwnClass(viewer, schoolClass) && schoolClass.archivedAt === null;

export const canCreateClass = (viewer: Viewer): boolean => viewer.kind === 'teacher';

/**
 * A colleague with an account and no class yet: whoever teaches may ask one in, also before there is a
 * class, but not who only looks on. Into a class its owner invites ({@link canRunClass}).
 */
export const canInviteTeacher = (viewer: Viewer, rolesHeld: readonly ClassRole[]): boolean =>
  viewer.kind === 'teacher' &&
  (rolesHeld.length === 0 || rolesHeld.some((role) => role !== 'observer'));

/** Draft, save and submit: the student alone, never a teacher in the student's place. */
export const canWorkOnAttempt = (viewer: Viewer, attempt: AttemptAccess): boolean =>
  viewer.kind === 'student' &&
  viewer.studentId === attempt.student.id &&
  attempt.student.class.archivedAt === null;

/** That the attempt exists, its sky and its state; not yet its result. */
export const canSeeAttempt = (viewer: Viewer, attempt: AttemptAccess): boolean =>
  canWorkOnAttempt(viewer, attempt) || canSeeClass(viewer, attempt.student.class);

/** Marks, the best pair and the explanation: the student only from the time the teacher set. */
export const canSeeResult = (
  viewer: Viewer,
  attempt: AttemptAccess & { feedbackVisible: boolean },
): boolean =>
  canSeeClass(viewer, attempt.student.class) ||
  (attempt.feedbackVisible && canWorkOnAttempt(viewer, attempt));

/** Seeing it in the list of what is due, starting it, practising on it. */
export const canTakeAssignment = (viewer: Viewer, assignment: AssignmentAccess): boolean =>
  viewer.kind === 'student' &&
  viewer.classId === assignment.class.id &&
  assignment.class.archivedAt === null &&
  assignment.state === 'published';
