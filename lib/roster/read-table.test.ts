import { describe, expect, it } from 'vitest';
import {
  decodeTable,
  firstNotUtf8,
  largestTableBytes,
  looksLikeWorkbook,
  readTable,
} from './read-table';

const cells = (text: string) => {
  const table = readTable(text);
  if (!table.ok) throw new Error(table.message);
  return table.rows.map((row) => row.cells);
};

describe('reading spreadsheet columns', () => {
  it('reads commas, quoted cells with commas, doubled quotes and line breaks in them', () => {
    expect(cells('name,group\r\n"Reed, Ash",A\r\n"The ""Owl""",B\r\n"two\nlines",C')).toEqual([
      ['name', 'group'],
      ['Reed, Ash', 'A'],
      ['The "Owl"', 'B'],
      ['two\nlines', 'C'],
    ]);
  });

  it('reads semicolons even where the names hold commas', () => {
    expect(cells('Name;Kurs\nReed, Ash;7b\nFern, Lou;7b')[1]).toEqual(['Reed, Ash', '7b']);
  });

  it('reads tabs, as a paste from a spreadsheet gives them', () => {
    expect(cells('Ash\tReed\nLou\tFern\n')).toEqual([
      ['Ash', 'Reed'],
      ['Lou', 'Fern'],
    ]);
  });

  it('takes a single column as it is', () => {
    expect(cells('Ash Reed\nLou Fern')).toEqual([['Ash Reed'], ['Lou Fern']]);
  });

  it('ignores a byte order mark', () => {
    expect(cells('\uFEFFname\nAsh')[0]).toEqual(['name']);
  });

  it('keeps a nickname in quotation marks inside a cell', () => {
    expect(cells('Ash "Comet" Reed\tA\nLou\tB')[0]).toEqual(['Ash "Comet" Reed', 'A']);
  });

  it('drops empty rows but keeps the row numbers a spreadsheet shows', () => {
    const table = readTable('name\n\nAsh\n,\nLou');
    expect(table.ok && table.rows.map((row) => row.rowNumber)).toEqual([1, 3, 5]);
  });

  it('says that a quotation mark is never closed', () => {
    const table = readTable('name\n"Ash\nLou');
    expect(table).toMatchObject({ ok: false });
    expect(!table.ok && table.message).toContain('opened in row 2 and never closed');
  });

  it.each([
    ['nothing', ''],
    ['blanks only', ' \n \n'],
    ['empty cells only', ',,\n,,'],
  ])('refuses %s with a sentence', (_, text) => {
    expect(readTable(text)).toMatchObject({ ok: false });
  });

  it('names the row from which on ten thousand are too many', () => {
    const rows = Array.from({ length: 10_000 }, (_, index) => `Student ${String(index)},x`);
    const table = readTable(['Name,Form', ...rows].join('\n'));
    expect(!table.ok && table.message).toContain('From row 502 on');
    expect(!table.ok && table.message).toContain('10001 rows');
  });

  it('names the row of what is no text', () => {
    const table = readTable('name\nA\0s\0h\0');
    expect(!table.ok && table.message).toContain('Row 2 is no plain text');
  });

  it('refuses more text than a class list needs', () => {
    expect(readTable('a'.repeat(largestTableBytes + 1))).toMatchObject({ ok: false });
  });
});

describe('the bytes of an uploaded file', () => {
  it('are read as UTF-8 where they are', () => {
    expect(decodeTable(new TextEncoder().encode('Zoë'))).toEqual({
      text: 'Zoë',
      encoding: 'utf-8',
    });
  });

  it('are read as UTF-16 where they begin with its mark', () => {
    expect(decodeTable(Uint8Array.of(0xff, 0xfe, 0x5a, 0, 0xeb, 0)).text).toBe('Zë');
  });

  it('are read as the old Western code page where they are no UTF-8', () => {
    expect(decodeTable(Uint8Array.of(0x5a, 0x6f, 0xeb))).toEqual({
      text: 'Zoë',
      encoding: 'windows-1252',
    });
  });

  it('name the first cell that is no UTF-8', () => {
    const line = new TextEncoder().encode('Form,Name\n7b,Ash\n7b,Zo');
    expect(firstNotUtf8(Uint8Array.of(...line, 0xeb, 0x0a))).toEqual({
      rowNumber: 3,
      column: 'Name',
    });
    expect(firstNotUtf8(new TextEncoder().encode('Name\nZoë'))).toBe(null);
  });

  it("are known for a spreadsheet's own file, which cannot be read as text", () => {
    expect(looksLikeWorkbook(Uint8Array.of(0x50, 0x4b, 3, 4))).toBe(true);
    expect(looksLikeWorkbook(new TextEncoder().encode('name\nAsh'))).toBe(false);
  });
});
