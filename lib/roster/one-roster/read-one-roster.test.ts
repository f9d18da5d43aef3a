import { describe, expect, it } from 'vitest';
import {
  oneRosterTablesOf,
  oneRosterZip,
  zipOfTables,
  zipStudent,
} from '../../../tests/support/one-roster-zip';
import { problemText } from '../file-problem';
import { mostInflatedBytes, mostZipEntries } from '../open-zip';
import { readOneRoster } from './read-one-roster';
import { shownNames } from './shown-names';

// The columns, the manifest and the two modes are those of 1EdTech OneRoster 1.2, CSV binding 1.2.1, as
// the design notes give them; no file of a real school is at hand.
const today = '2026-11-26';
const read = (bytes: Uint8Array) => readOneRoster('office.zip', bytes, today);
const two = [zipStudent(1), zipStudent(2)];

function problemsOf(bytes: Uint8Array): string[] {
  const answer = read(bytes);
  return answer.ok ? [] : answer.problems.map(problemText);
}

/** The tables of two students with one cell, found by its column, changed. */
function changed(
  file: string,
  row: number,
  column: string,
  value: string,
  mode: 'bulk' | 'delta' = 'bulk',
): Record<string, string[][]> {
  const tables = oneRosterTablesOf(two, { mode });
  const header = tables[file]?.[0] ?? [];
  const cells = tables[file]?.[row - 1];
  if (cells === undefined || !header.includes(column)) throw new Error('no such cell');
  cells[header.indexOf(column)] = value;
  return tables;
}

describe('a OneRoster zip', () => {
  it('gives each class with its students, and nobody else', () => {
    expect(read(oneRosterZip(2))).toEqual({
      ok: true,
      mode: 'bulk',
      classes: [
        {
          sourcedId: 'class-8a',
          title: 'Year 8, Astronomy',
          students: [
            { sourcedId: 'student-1', row: 2, givenName: 'Bittern', familyName: 'Bfold1' },
            { sourcedId: 'student-2', row: 3, givenName: 'Crake', familyName: 'Cfold2' },
          ],
          gone: [],
        },
      ],
    });
  });

  it('gives no address, telephone number or password to anybody', () => {
    expect(JSON.stringify(read(oneRosterZip(30)))).not.toMatch(/@|01234|secret/);
  });

  it('reads a byte order mark, names in all letters and quoted cells', () => {
    const tables = changed('users.csv', 2, 'givenName', 'Zoë, “Zo”');
    const bytes = zipOfTables(tables, {
      'manifest.csv': new TextEncoder().encode(
        `\uFEFF${(tables['manifest.csv'] ?? []).map((row) => row.join(',')).join('\n')}`,
      ),
    });
    const answer = read(bytes);
    expect(answer.ok && answer.classes[0]?.students[0]?.givenName).toBe('Zoë, “Zo”');
  });

  it('goes by the name a child prefers', () => {
    const answer = read(zipOfTables(changed('users.csv', 3, 'preferredGivenName', 'Kit')));
    expect(answer.ok && answer.classes[0]?.students[1]?.givenName).toBe('Kit');
  });

  it.each([
    ['has ended', changed('enrollments.csv', 3, 'endDate', '2026-11-26')],
    ['is switched off in the school’s books', changed('users.csv', 3, 'enabledUser', 'false')],
    ['is taken away', changed('enrollments.csv', 3, 'status', 'tobedeleted', 'delta')],
  ])('leaves out a student whose enrolment %s', (_, tables) => {
    const answer = read(zipOfTables(tables));
    expect(answer.ok && answer.classes[0]?.students.map((one) => one.sourcedId)).toEqual([
      'student-1',
    ]);
    expect(answer.ok && answer.classes[0]?.gone).toEqual(['student-2']);
  });

  it('counts a student enrolled twice once', () => {
    const tables = oneRosterTablesOf(two);
    const again = tables['enrollments.csv']?.[1] ?? [];
    tables['enrollments.csv']?.push(['another', ...again.slice(1)]);
    const answer = read(zipOfTables(tables));
    expect(answer.ok && answer.classes[0]?.students.length).toBe(2);
  });

  it('takes a file of changes without the tables in which nothing changed', () => {
    const tables = oneRosterTablesOf(two, { mode: 'delta' });
    delete tables['classes.csv'];
    tables['manifest.csv'] = (tables['manifest.csv'] ?? []).filter(
      ([name]) => name !== 'file.classes',
    );
    expect(read(zipOfTables(tables))).toMatchObject({
      ok: true,
      mode: 'delta',
      classes: [{ sourcedId: 'class-8a', title: 'Class class-8a' }],
    });
  });
});

describe('what is wrong with a zip is said with file, row and column', () => {
  it('when it is none', () => {
    expect(problemsOf(new TextEncoder().encode('Name\nAsh'))).toEqual([
      expect.stringMatching(/^office.zip: this is not a zip file/),
    ]);
  });

  it('when it ends too early or its bytes are spoilt', () => {
    const whole = oneRosterZip(200);
    expect(problemsOf(whole.slice(0, 3000))[0]).toMatch(/damaged|ends too early/);
    const spoilt = whole.map((byte, at) => (at > 300 && at < 900 ? 255 - byte : byte));
    expect(problemsOf(spoilt)[0]).toMatch(/^office.zip: /);
  });

  it('when there is no manifest, or only one in a folder', () => {
    const tables = oneRosterTablesOf(two);
    delete tables['manifest.csv'];
    expect(problemsOf(zipOfTables(tables))[0]).toContain('there is no manifest.csv');
    const inFolder = Object.fromEntries(
      Object.entries(oneRosterTablesOf(two)).map(([name, rows]) => [`export/${name}`, rows]),
    );
    expect(problemsOf(zipOfTables(inFolder))[0]).toContain('not in the folder “export”');
  });

  it('when paths lead out of it: they are not looked at', () => {
    const raw = { '../users.csv': Uint8Array.of(1), '/etc/users.csv': Uint8Array.of(2) };
    expect(read(zipOfTables(oneRosterTablesOf(two), raw)).ok).toBe(true);
  });

  it('when it is of another version', () => {
    const [problem] = problemsOf(zipOfTables(changed('manifest.csv', 3, 'value', '1.1')));
    expect(problem).toMatch(/^manifest.csv, row 3, column value: oneroster.version is 1.1/);
  });

  it('when a table is missing, said to be there or not', () => {
    const tables = oneRosterTablesOf(two);
    delete tables['roles.csv'];
    expect(problemsOf(zipOfTables(tables))).toEqual([
      expect.stringMatching(/^manifest.csv, row 7, column value: it says that roles.csv is/),
    ]);
    const absent = changed('manifest.csv', 8, 'value', 'absent');
    expect(problemsOf(zipOfTables(absent))[0]).toContain('users.csv is left out');
    const odd = changed('manifest.csv', 8, 'value', 'weekly');
    expect(problemsOf(zipOfTables(odd))[0]).toContain('“weekly” is none of bulk, delta');
  });

  it('when a required column or cell is missing, all at once', () => {
    const tables = changed('users.csv', 3, 'familyName', ' ');
    const header = tables['classes.csv']?.[0] ?? [];
    header[header.indexOf('classType')] = 'ClassType';
    expect(problemsOf(zipOfTables(tables))).toEqual([
      expect.stringMatching(/^users.csv, row 3, column familyName: empty/),
      expect.stringMatching(/^classes.csv, row 1, column classType: .*Capitals count/),
    ]);
  });

  it('when an id stands twice', () => {
    expect(problemsOf(zipOfTables(changed('users.csv', 3, 'sourcedId', 'student-1')))[0]).toMatch(
      /^users.csv, row 3, column sourcedId: the same as in row 2/,
    );
  });

  it('when a file of changes does not say what changed', () => {
    expect(problemsOf(zipOfTables(changed('users.csv', 2, 'status', '', 'delta')))[0]).toMatch(
      /^users.csv, row 2, column status: empty/,
    );
    expect(
      problemsOf(zipOfTables(changed('users.csv', 2, 'status', 'inactive', 'delta')))[0],
    ).toContain('“inactive” is neither');
  });

  it('when an enrolment leads nowhere or contradicts the roles', () => {
    expect(
      problemsOf(zipOfTables(changed('enrollments.csv', 2, 'userSourcedId', 'nobody')))[0],
    ).toMatch(/^enrollments.csv, row 2, column userSourcedId: there is no user nobody/);
    expect(
      problemsOf(zipOfTables(changed('enrollments.csv', 2, 'classSourcedId', 'none')))[0],
    ).toMatch(/^enrollments.csv, row 2, column classSourcedId: there is no class none/);
    expect(problemsOf(zipOfTables(changed('roles.csv', 2, 'role', 'guardian')))[0]).toMatch(
      /^enrollments.csv, row 2, column role: student here, but not in roles.csv/,
    );
  });

  it('when a name begins as a formula does', () => {
    expect(problemsOf(zipOfTables(changed('users.csv', 2, 'givenName', '=cmd|x')))).toEqual([
      expect.stringMatching(/^users.csv, row 2, column givenName: This begins with =/),
    ]);
  });

  it('when letters are not in UTF-8, or all of it is in UTF-16', () => {
    const tables = oneRosterTablesOf(two);
    const rows = (tables['users.csv'] ?? []).map((row) => row.join(',')).join('\n');
    const latin = Uint8Array.from(rows.replace('Crake', 'Cra\u00EBe'), (c) => c.charCodeAt(0));
    expect(problemsOf(zipOfTables(tables, { 'users.csv': latin }))).toEqual([
      expect.stringMatching(/^users.csv, row 3, column givenName: a letter is not in UTF-8/),
    ]);
    const wide = Uint8Array.from([
      0xff,
      0xfe,
      ...Array.from(rows).flatMap((c) => [c.charCodeAt(0), 0]),
    ]);
    expect(problemsOf(zipOfTables(tables, { 'users.csv': wide }))[0]).toMatch(
      /^users.csv, row 1: it is written in UTF-16/,
    );
    const bare = wide.slice(2);
    expect(problemsOf(zipOfTables(tables, { 'users.csv': bare }))[0]).toMatch(
      /^users.csv, row 1, column sourcedId/,
    );
  });

  it('when a quotation mark is never closed', () => {
    const bad = new TextEncoder().encode('sourcedId,enabledUser\n"a,true\nb,true');
    expect(problemsOf(zipOfTables(oneRosterTablesOf(two), { 'users.csv': bad }))[0]).toMatch(
      /^users.csv, row 2: a quotation mark/,
    );
  });

  it('when ten thousand are in one class', () => {
    expect(problemsOf(oneRosterZip(10_000))).toEqual([
      expect.stringMatching(
        /^enrollments.csv, row 502, column classSourcedId: more than 500 students in class Year 8, Astronomy/,
      ),
    ]);
  });

  it('when a table has more rows than are read', () => {
    const header = (oneRosterTablesOf([])['users.csv'] ?? [])[0] ?? [];
    const long = new TextEncoder().encode(
      `${header.join(',')}\n${'x,,,true,x,A,B,,,,\n'.repeat(50_001)}`,
    );
    expect(problemsOf(zipOfTables(oneRosterTablesOf(two), { 'users.csv': long }))[0]).toMatch(
      /^users.csv, row 50002: more rows than are read/,
    );
  });

  it('when it swells beyond measure, in a table or out of its sight', () => {
    const swollen = new Uint8Array(mostInflatedBytes + 1).fill(44);
    const bomb = zipOfTables(oneRosterTablesOf(two), { 'users.csv': swollen });
    expect(bomb.length).toBeLessThan(mostInflatedBytes / 500);
    expect(problemsOf(bomb)).toEqual([
      expect.stringMatching(/^office.zip: unpacked it is larger than 20 MB .*in users.csv/),
    ]);
    // What nobody asks for is never unpacked.
    expect(read(zipOfTables(oneRosterTablesOf(two), { 'photos.bin': swollen })).ok).toBe(true);
  });

  it('when it holds too many files', () => {
    const many = Object.fromEntries(
      Array.from({ length: mostZipEntries + 1 }, (_, at) => [`a${String(at)}`, Uint8Array.of(1)]),
    );
    expect(problemsOf(zipOfTables(oneRosterTablesOf(two), many))[0]).toContain(
      'more than 200 files',
    );
  });

  it('and never for longer than a thousand lines', () => {
    const header = (oneRosterTablesOf([])['users.csv'] ?? [])[0] ?? [];
    const empty = new TextEncoder().encode(`${header.join(',')}\n${'x,,,,,,,,,,\n'.repeat(5000)}`);
    expect(problemsOf(zipOfTables(oneRosterTablesOf(two), { 'users.csv': empty })).length).toBe(
      1000,
    );
  });
});

describe('names to show', () => {
  const students = [
    { sourcedId: '1', row: 2, givenName: 'Ash', familyName: 'Reed' },
    { sourcedId: '2', row: 3, givenName: 'Ash', familyName: 'Rook' },
    { sourcedId: '3', row: 4, givenName: 'Lou', familyName: 'Örn' },
  ];

  it('are as short as asked for, and longer for those who would share one', () => {
    expect(shownNames(students, 'given')).toEqual(['Ash Reed', 'Ash Rook', 'Lou']);
    expect(shownNames(students, 'initial')).toEqual(['Ash Reed', 'Ash Rook', 'Lou Ö']);
    expect(shownNames(students, 'full')).toEqual(['Ash Reed', 'Ash Rook', 'Lou Örn']);
  });
});
