import type { ProblemList } from '../file-problem';
import { cleanName, faultOfName, mostStudents, nameFaultText } from '../student-name';
import type { CsvRow } from './read-csv';

export type OneRosterStudent = {
  sourcedId: string;
  /** The row in users.csv. */
  row: number;
  givenName: string;
  familyName: string;
};
export type OneRosterClass = {
  sourcedId: string;
  title: string;
  students: readonly OneRosterStudent[];
  /** Ids of those whom the file says have left: only a file of changes says so of anybody. */
  gone: readonly string[];
};

const users = 'users.csv';
const enrollments = 'enrollments.csv';

/** Puts the tables together: who is in which class, as a student, today. */
export function classesOf(
  tables: {
    users: readonly CsvRow[];
    classes: readonly CsvRow[];
    enrollments: readonly CsvRow[];
    roles: readonly CsvRow[];
    /** Whether every class must be in classes.csv. */
    classesAreListed: boolean;
  },
  today: string,
  problems: ProblemList,
): OneRosterClass[] {
  const userOf = new Map(tables.users.map((user) => [user.cell('sourcedId'), user]));
  const titleOf = new Map(
    tables.classes
      .filter(({ cell }) => cell('status') !== 'tobedeleted')
      .map(({ cell }) => [cell('sourcedId'), cleanName(cell('title'))]),
  );
  const deleted = new Set(
    tables.classes
      .filter(({ cell }) => cell('status') === 'tobedeleted')
      .map(({ cell }) => cell('sourcedId')),
  );
  const rolesOf = new Map<string, Set<string>>();
  for (const { cell } of tables.roles) {
    const roles = rolesOf.get(cell('userSourcedId')) ?? new Set();
    rolesOf.set(cell('userSourcedId'), roles.add(cell('role')));
  }

  const inClass = new Map<string, { there: Map<string, CsvRow>; gone: Set<string> }>();
  for (const { row, cell } of tables.enrollments) {
    if (cell('role') !== 'student') continue;
    const [userId, classId] = [cell('userSourcedId'), cell('classSourcedId')];
    const ended =
      cell('status') === 'tobedeleted' || (cell('endDate') !== '' && cell('endDate') <= today);
    if (deleted.has(classId)) continue;
    if (tables.classesAreListed && !titleOf.has(classId)) {
      const message = `there is no class ${classId} in classes.csv. Export the zip again.`;
      problems.add(enrollments, row, 'classSourcedId', message);
      continue;
    }
    const members = inClass.get(classId) ?? { there: new Map<string, CsvRow>(), gone: new Set() };
    inClass.set(classId, members);
    if (ended) {
      members.gone.add(userId);
      continue;
    }
    const user = userOf.get(userId);
    if (user === undefined) {
      const message = `there is no user ${userId} in users.csv. Ask for a whole (bulk) export.`;
      problems.add(enrollments, row, 'userSourcedId', message);
      continue;
    }
    const roles = rolesOf.get(userId);
    if (roles !== undefined && !roles.has('student')) {
      const message = `student here, but not in roles.csv (${[...roles].join(', ')}). Have one of the two put right.`;
      problems.add(enrollments, row, 'role', message);
      continue;
    }
    // Switched off in the school's own books: not asked for anything here either.
    if (user.cell('enabledUser').toLowerCase() === 'false' || user.cell('status') === 'tobedeleted')
      members.gone.add(userId);
    else if (!members.there.has(userId)) {
      members.there.set(userId, user);
      if (members.there.size === mostStudents + 1) {
        const message = `more than ${String(mostStudents)} students in class ${titleOf.get(classId) ?? classId}, and a class here holds no more.`;
        problems.add(enrollments, row, 'classSourcedId', message);
      }
    }
  }

  const checked = new Set<string>();
  return [...new Set([...titleOf.keys(), ...inClass.keys()])].map((sourcedId) => {
    const { there, gone } = inClass.get(sourcedId) ?? {
      there: new Map<string, CsvRow>(),
      gone: [],
    };
    return {
      sourcedId,
      title: titleOf.get(sourcedId) ?? `Class ${sourcedId}`,
      students: [...there].map(([id, user]) => {
        if (!checked.has(id)) checkNames(user, problems);
        checked.add(id);
        return {
          sourcedId: id,
          row: user.row,
          givenName: cleanName(user.cell('preferredGivenName') || user.cell('givenName')),
          familyName: cleanName(user.cell('preferredFamilyName') || user.cell('familyName')),
        };
      }),
      // Moved from one set to another of the same class: still there.
      gone: [...gone].filter((id) => !there.has(id)),
    };
  });
}

function checkNames(user: CsvRow, problems: ProblemList): void {
  for (const column of ['givenName', 'familyName', 'preferredGivenName', 'preferredFamilyName']) {
    const cell = user.cell(column);
    const fault = cell === '' ? null : faultOfName(cleanName(cell));
    if (fault !== null) problems.add(users, user.row, column, nameFaultText(fault));
  }
}
