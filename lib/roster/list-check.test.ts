import { describe, expect, it } from 'vitest';
import { readTable, type TableRow } from './read-table';
import { entriesOf, leftOutOf, rowProblemText, rowsOfTable, rowsOfTyped } from './list-check';
import { guessHeaderRow, guessIdColumn, guessNameColumn, rosterColumns } from './roster-columns';
import { longestDisplayName } from './student-name';

function rowsOf(text: string): readonly TableRow[] {
  const table = readTable(text);
  if (!table.ok) throw new Error(table.message);
  return table.rows;
}

describe('what the columns hold', () => {
  const rows = rowsOf(
    'No,Given,Family,E-Mail,Date of birth\n1,Ash,Reed,ash@school.test,2011-03-04\n2,Lou,Fern,lou@school.test,2011-09-12',
  );

  it('is told from a header row', () => {
    expect(guessHeaderRow(rows)).toBe(true);
    expect(rosterColumns(rows, true).map((column) => column.personal)).toEqual([
      null,
      null,
      null,
      'email',
      'birth-date',
    ]);
  });

  it('is told from the cells where there is no header', () => {
    const bare = rowsOf('Ash,ash@school.test,4.3.2011\nLou,lou@school.test,12.9.2011');
    expect(guessHeaderRow(bare)).toBe(false);
    expect(rosterColumns(bare, false).map((column) => column.personal)).toEqual([
      null,
      'email',
      'birth-date',
    ]);
  });

  it('shows no cell of a personal column', () => {
    expect(rosterColumns(rows, true)[3]?.samples).toEqual([]);
  });

  it('passes over register numbers when it looks for the name', () => {
    expect(guessNameColumn(rosterColumns(rows, true))).toBe(1);
  });

  it('offers no name column when every column is personal', () => {
    expect(guessNameColumn(rosterColumns(rowsOf('a@b.test\nc@d.test'), false))).toBeNull();
  });
});

describe('a column of ids', () => {
  const guess = (text: string) => {
    const rows = rowsOf(text);
    return guessIdColumn(rows, rosterColumns(rows, true));
  };

  it('is known by its name, where each row has another', () => {
    expect(guess('Student ID,Name\na1,Ash\na2,Lou')).toBe(0);
    expect(guess('Name,sourcedId\nAsh,a1\nLou,a2')).toBe(1);
  });

  it.each([
    'ID',
    'id',
    'Student ID',
    'StudentID',
    'student_id',
    'Pupil number',
    'Pupil No.',
    'Learner code',
    'Admission number',
    'School ID',
    'Student’s reference',
    'ID number',
    'Identifier',
  ])('may be called %s', (head) => {
    expect(guess(`${head},Name\na1,Ash\na2,Lou`)).toBe(0);
    expect(guess(`Given,Family,${head}\nAsh,Reed,4711\nLou,Fern,4712`)).toBe(2);
  });

  it.each(['Nr', 'No.', 'Number', 'Identity card', 'National number', 'Name', 'Form', 'Idris'])(
    'is not seen in %s',
    (head) => {
      expect(guess(`${head},Known as\na1,Ash\na2,Lou`)).toBe(null);
    },
  );

  it('is known though its numbers are as long as a telephone’s, and never holds addresses', () => {
    expect(guess('Student ID,Name\n20110304,Ash\n20110305,Lou')).toBe(0);
    expect(guess('Student ID,Name\nash@school.test,Ash\nlou@school.test,Lou')).toBe(null);
  });

  it('is not taken for the name, and names the first row where no other head does', () => {
    const rows = rowsOf('Pupil number,Given,Family\nK1,Ash,Reed\nK2,Lou,Fern');
    expect(guessNameColumn(rosterColumns(rows, true))).toBe(1);
    expect(guessHeaderRow(rowsOf('ID,Called\n1,Ash\n2,Lou'))).toBe(true);
    expect(guessHeaderRow(rowsOf('First,Last\nAsh,Reed'))).toBe(true);
  });

  it('is still proposed where one row of several repeats or lacks its id', () => {
    expect(guess('ID,Name\n1,Ash\n2,Lou\n2,Lou\n3,Kit\n4,Bea')).toBe(0);
    expect(guess('ID,Name\n1,Ash\n2,Lou\n,Mo\n3,Kit')).toBe(0);
  });

  it('is not taken where many ids repeat or are missing', () => {
    expect(guess('id,Name\na1,Ash\na1,Lou')).toBe(null);
    expect(guess('id,Name\na1,Ash\n,Lou')).toBe(null);
  });
});

describe('the rows of a list', () => {
  const rows = rowsOf('Given;Family\nAsh;Reed\nLou;Fern\nash;REED\n;\nKit;');
  const joined = { hasHeader: true, nameColumn: 0, joinColumn: 1, idColumn: null };
  const names = (list: ReturnType<typeof rowsOfTable>) => entriesOf(list).map(({ name }) => name);

  it('join two columns with one space, and take one alone where the other is empty', () => {
    expect(rowsOfTable(rows, joined).map((row) => row.name)).toEqual([
      'Ash Reed',
      'Lou Fern',
      'ash REED',
      'Kit',
    ]);
  });

  it('name the row that a name repeats, whatever its capitals and the coding of its accents', () => {
    expect(rowsOfTable(rows, joined)[2]?.problem).toEqual({ code: 'repeats-name', rowNumber: 2 });
    expect(rowsOfTyped('Zo\u00EB\nZoe\u0308')[1]?.problem).toEqual({
      code: 'repeats-name',
      rowNumber: 1,
    });
  });

  it('take two of one name with an id each, and refuse one id for two', () => {
    const withIds = { hasHeader: true, nameColumn: 0, joinColumn: null, idColumn: 1 };
    const list = rowsOfTable(rowsOf('Name,id\nAsh,1\nAsh,2\nLou,2'), withIds);
    expect(list.map((row) => row.problem)).toEqual([
      null,
      null,
      { code: 'repeats-id', rowNumber: 3 },
    ]);
    expect(entriesOf(list)).toEqual([
      { row: 2, sourcedId: '1', name: 'Ash' },
      { row: 3, sourcedId: '2', name: 'Ash' },
    ]);
  });

  it('say of a row with no name, too long a one, an address and a formula what is wrong', () => {
    const bad = rowsOfTable(
      rowsOf(`x,1\n,2\n${'n'.repeat(longestDisplayName + 1)},3\na b@c.de,4\n=cmd,5`),
      { hasHeader: false, nameColumn: 0, joinColumn: null, idColumn: null },
    );
    expect(bad.map((row) => row.problem?.code ?? null)).toEqual([
      null,
      'empty',
      'too-long',
      'email',
      'formula',
    ]);
    for (const { problem } of bad) if (problem) expect(rowProblemText(problem)).toMatch(/[.]$/);
  });

  // OWASP ASVS 5.0, 1.2.10, and the same signs in their full-width forms.
  it.each(['=1+1', '+44', '-2', '−2', '@sum', '＝1', '＋1', '－1', '＠a', '\t=1', ' \u200B=1'])(
    'take no name that a spreadsheet would run: %s',
    (typed) => {
      expect(rowsOfTyped(typed)[0]?.problem?.code).toBe('formula');
    },
  );

  it.each(["O'Neill", 'Anne-Marie', "'t Hooft", 'Ash (left-handed)', 'Zoë 2', '李雷'])(
    'take %s',
    (typed) => {
      expect(rowsOfTyped(typed)[0]?.problem).toBe(null);
    },
  );

  it('take a correction typed over a row', () => {
    const corrected = rowsOfTable(rows, joined, new Map([[4, 'Ash Reed 2']]));
    expect(names(corrected)).toEqual(['Ash Reed', 'Lou Fern', 'Ash Reed 2', 'Kit']);
  });

  it('come typed one to a line, blank ones skipped', () => {
    expect(names(rowsOfTyped('  Ash   Reed \n\nLou\n'))).toEqual(['Ash Reed', 'Lou']);
  });
});

describe('what is left out of a list', () => {
  const text = 'Name,Id\nAsh,1\n\n,\n\nash,\n=cmd,3\n,4\nLou,5\n\n\n';
  const read = readTable(text);
  if (!read.ok) throw new Error(read.message);
  const mapping = { hasHeader: true, nameColumn: 0, joinColumn: null, idColumn: 1 };
  const rows = rowsOfTable(read.rows, mapping);

  it('is named row by row, with what stands there and why; empty rows beside each other together', () => {
    expect(
      leftOutOf(rows, read.emptyRows).map(({ rowNumber, lastRowNumber, typed }) => [
        rowNumber,
        lastRowNumber,
        typed,
      ]),
    ).toEqual([
      [3, 5, ''],
      [6, 6, 'ash'],
      [7, 7, '=cmd'],
      [8, 8, ''],
    ]);
    expect(leftOutOf(rows, read.emptyRows).map(({ why }) => why)).toEqual([
      'Nothing stands here.',
      'The same name as row 2. Add an initial or a number.',
      'This begins with =, +, − or @, as a formula does. Take the sign away, or type the name.',
      'No name here. Type one, or leave the row out.',
    ]);
  });

  it('and what is taken make up the whole list, but for the heads and what is empty after the last name', () => {
    const taken = entriesOf(rows).map(({ row }) => row);
    const left = leftOutOf(rows, read.emptyRows).flatMap(({ rowNumber, lastRowNumber }) =>
      Array.from({ length: lastRowNumber - rowNumber + 1 }, (_, index) => rowNumber + index),
    );
    expect([...taken, ...left].toSorted((one, other) => one - other)).toEqual([
      2, 3, 4, 5, 6, 7, 8, 9,
    ]);
  });
});
