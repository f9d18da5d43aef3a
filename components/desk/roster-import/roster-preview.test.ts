import { describe, expect, it } from 'vitest';
import { readTable, type TableRow } from './read-table';
import { guessHeaderRow, guessNameColumn, rosterColumns } from './roster-columns';
import { longestDisplayName, namesToAdd, previewTable, previewTyped } from './roster-preview';

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

describe('the preview', () => {
  const rows = rowsOf('Given;Family\nAsh;Reed\nLou;Fern\nash;REED\n;\nKit;');
  const joined = { hasHeader: true, nameColumn: 0, joinColumn: 1 };

  it('joins two columns with one space, and takes one alone where the other is empty', () => {
    expect(previewTable(rows, joined, []).map((row) => row.name)).toEqual([
      'Ash Reed',
      'Lou Fern',
      'ash REED',
      'Kit',
    ]);
  });

  it('names the row that a name repeats, whatever its capitals', () => {
    expect(previewTable(rows, joined, [])[2]?.problem).toEqual({
      code: 'repeats-row',
      rowNumber: 2,
    });
  });

  it('names a student who is there already', () => {
    expect(previewTable(rows, joined, ['lou fern'])[1]?.problem).toEqual({ code: 'already-there' });
  });

  it('treats composed and decomposed accents as one name', () => {
    expect(previewTyped('Zoe\u0308', ['Zo\u00EB'])[0]?.problem).toEqual({ code: 'already-there' });
  });

  it('finds rows with no name, with too long a one and with an address', () => {
    const bad = previewTable(
      rowsOf(`x,1\n,2\n${'n'.repeat(longestDisplayName + 1)},3\na b@c.de,4`),
      {
        hasHeader: false,
        nameColumn: 0,
        joinColumn: null,
      },
      [],
    );
    expect(bad.map((row) => row.problem?.code ?? null)).toEqual([
      null,
      'empty',
      'too-long',
      'looks-like-email',
    ]);
  });

  it('takes a correction typed over a row', () => {
    const corrected = previewTable(rows, joined, [], new Map([[4, 'Ash Reed 2']]));
    expect(namesToAdd(corrected)).toEqual(['Ash Reed', 'Lou Fern', 'Ash Reed 2', 'Kit']);
  });

  it('adds only rows without a problem', () => {
    expect(namesToAdd(previewTable(rows, joined, ['Kit']))).toEqual(['Ash Reed', 'Lou Fern']);
  });

  it('reads names typed one to a line and skips the blank ones', () => {
    expect(namesToAdd(previewTyped('  Ash   Reed \n\nLou\n', []))).toEqual(['Ash Reed', 'Lou']);
  });
});
