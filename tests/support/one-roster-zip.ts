import { strToU8, zipSync, type Zippable } from 'fflate';

type Tables = Readonly<Record<string, readonly (readonly string[])[]>>;
type ZipStudent = { id: string; givenName: string; familyName: string };

/** Invented names, another for each number up to a thousand. */
const given = ['Avocet', 'Bittern', 'Crake', 'Dunlin', 'Egret', 'Fulmar', 'Gadwall', 'Hobby'];
export const zipStudent = (number: number): ZipStudent => ({
  id: `student-${String(number)}`,
  givenName: given[number % given.length] ?? '',
  familyName: `${String.fromCharCode(65 + (number % 26))}fold${String(number)}`,
});

const csv = (rows: readonly (readonly string[])[]): string =>
  rows
    .map((row) =>
      row.map((cell) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)),
    )
    .map((row) => `${row.join(',')}\r\n`)
    .join('');

const manifest = (mode: 'bulk' | 'delta'): string[][] => [
  ['propertyName', 'value'],
  ['manifest.version', '1.0'],
  ['oneroster.version', '1.2'],
  ['file.academicSessions', 'absent'],
  ['file.classes', mode],
  ['file.enrollments', mode],
  ['file.roles', mode],
  ['file.users', mode],
  ['source.systemName', 'An invented school office'],
];

/**
 * The tables of a OneRoster 1.2 export of one class with these students and their teacher, with the
 * columns that a real one has, personal ones too.
 */
export function oneRosterTablesOf(
  students: readonly ZipStudent[],
  {
    mode = 'bulk',
    classId = 'class-8a',
    title = 'Year 8, Astronomy',
  }: { mode?: 'bulk' | 'delta'; classId?: string; title?: string } = {},
): Record<string, string[][]> {
  const change = mode === 'bulk' ? ['', ''] : ['active', '2026-11-01T08:00:00.000Z'];
  const people = [
    ...students.map((student) => ({ ...student, role: 'student' })),
    { id: 'teacher-1', givenName: 'Robin', familyName: 'Sandpiper', role: 'teacher' },
  ];
  return {
    'manifest.csv': manifest(mode),
    'users.csv': [
      [
        ...['sourcedId', 'status', 'dateLastModified', 'enabledUser', 'username', 'givenName'],
        ...['familyName', 'email', 'phone', 'password', 'preferredGivenName'],
      ],
      ...people.map(({ id, givenName, familyName }) => [
        ...[id, ...change, 'true', id, givenName, familyName],
        ...[`${id}@school.example`, '01234 567890', 'secret', ''],
      ]),
    ],
    'classes.csv': [
      [
        ...['sourcedId', 'status', 'dateLastModified', 'title', 'courseSourcedId'],
        ...['classType', 'schoolSourcedId', 'termSourcedIds'],
      ],
      [classId, ...change, title, 'course-1', 'scheduled', 'school-1', 'term-1'],
    ],
    'enrollments.csv': [
      [
        ...['sourcedId', 'status', 'dateLastModified', 'classSourcedId', 'schoolSourcedId'],
        ...['userSourcedId', 'role', 'primary', 'beginDate', 'endDate'],
      ],
      ...people.map(({ id, role }) => [
        ...[`${classId}-${id}`, ...change, classId, 'school-1', id, role, 'false', '', ''],
      ]),
    ],
    'roles.csv': [
      [
        ...['sourcedId', 'status', 'dateLastModified', 'userSourcedId', 'roleType', 'role'],
        'orgSourcedId',
      ],
      ...people.map(({ id, role }) => [`role-${id}`, ...change, id, 'primary', role, 'school-1']),
    ],
  };
}

/** The zip of these tables; `raw` puts in bytes as they are. */
export function zipOfTables(
  tables: Tables,
  raw: Readonly<Record<string, Uint8Array>> = {},
): Uint8Array {
  const files: Zippable = {};
  for (const [name, rows] of Object.entries(tables)) files[name] = strToU8(csv(rows));
  return zipSync({ ...files, ...raw });
}

/** A whole class of so many students, as the school office sends it. */
export const oneRosterZip = (
  count: number,
  options: Parameters<typeof oneRosterTablesOf>[1] = {},
): Uint8Array =>
  zipOfTables(
    oneRosterTablesOf(
      Array.from({ length: count }, (_, index) => zipStudent(index + 1)),
      options,
    ),
  );
