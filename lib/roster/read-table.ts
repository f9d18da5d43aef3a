import { CsvError, parse } from 'csv-parse/browser/esm/sync';
import { rowOfCsvError } from './one-roster/read-csv';
import { mostStudents } from './student-name';

/** Far above a class list, far below what stalls a browser. */
export const largestTableBytes = 2 * 1024 * 1024;
/** A class and a row that names the columns. */
const mostTableRows = mostStudents + 1;

export type Delimiter = ',' | ';' | '\t' | '|';
/** A row keeps the number that a spreadsheet shows beside it, so that a problem can name it. */
export type TableRow = { rowNumber: number; cells: readonly string[] };
export type ReadTable =
  | {
      ok: true;
      rows: readonly TableRow[];
      /** Rows with nothing in them, up to the last one that holds something. */
      emptyRows: readonly number[];
      delimiter: Delimiter;
    }
  | { ok: false; message: string };

const delimiters: readonly Delimiter[] = ['\t', ';', ',', '|'];

/**
 * Reads rows and columns as spreadsheets write them: RFC 4180 with commas, or with semicolons or
 * tabs, a byte order mark, quoted cells with line breaks in them, any line ending.
 */
export function readTable(text: string): ReadTable {
  if (text.length > largestTableBytes) {
    return {
      ok: false,
      message:
        'That is more text than a class list needs (over 2 MB). Keep only the columns with the names.',
    };
  }
  const clean = text.replace(/^\uFEFF/, '');
  if (clean.trim() === '') return { ok: false, message: 'There is nothing in it yet.' };
  if (clean.includes('\0')) {
    const row = clean.slice(0, clean.indexOf('\0')).split('\n').length;
    return {
      ok: false,
      message: `Row ${String(row)} is no plain text. Save the list as CSV in UTF-8, then open it again.`,
    };
  }

  const delimiter = guessDelimiter(clean);
  const records = readRecords(clean, delimiter);
  if (!Array.isArray(records)) return { ok: false, message: records.message };

  const all = records.map((record, index) => ({
    rowNumber: index + 1,
    cells: record.map((cell) => cell.trim()),
  }));
  const rows = all.filter(isFilled);
  if (rows.length === 0) return { ok: false, message: 'Every row is empty.' };
  const tooMany = rows[mostTableRows];
  if (tooMany !== undefined) {
    return {
      ok: false,
      message: `From row ${String(tooMany.rowNumber)} on there are too many: a class holds at most ${String(mostStudents)} students, and this list has ${String(rows.length)} rows. Keep only the rows of this class. Nothing was taken.`,
    };
  }
  const last = rows.at(-1)?.rowNumber ?? 0;
  const emptyRows = all
    .filter((row) => row.rowNumber < last && !isFilled(row))
    .map(({ rowNumber }) => rowNumber);
  return { ok: true, rows, emptyRows, delimiter };
}

const isFilled = ({ cells }: TableRow): boolean => cells.some((cell) => cell !== '');

function readRecords(text: string, delimiter: Delimiter): string[][] | { message: string } {
  try {
    return parse(text, {
      delimiter,
      relax_column_count: true,
      // Nicknames in quotation marks inside a cell are common in pasted lists.
      relax_quotes: true,
    });
  } catch (error) {
    if (error instanceof CsvError) return { message: explain(error) };
    throw error;
  }
}

function explain(error: CsvError): string {
  if (error.code === 'CSV_QUOTE_NOT_CLOSED') {
    const row = rowOfCsvError(error);
    return `A quotation mark (") is opened${row === null ? '' : ` in row ${String(row)}`} and never closed, so the columns cannot be told apart. Remove it or close it, then try again.`;
  }
  return `The columns cannot be told apart: ${error.message}.`;
}

/** The separator that splits the first rows most evenly: the same count, above zero, in most of them. */
function guessDelimiter(text: string): Delimiter {
  const lines = unquoted(text)
    .split(/\r\n|\n|\r/)
    .filter((line) => line.trim() !== '')
    .slice(0, 20);
  let best: { delimiter: Delimiter; score: number } = { delimiter: ',', score: 0 };
  for (const delimiter of delimiters) {
    const counts = lines.map((line) => line.split(delimiter).length - 1);
    const usual = counts.filter((count) => count > 0 && count === counts[0]).length;
    // Strictly greater: on a tie the earlier, less ambiguous separator stays.
    if (usual > best.score) best = { delimiter, score: usual };
  }
  return best.delimiter;
}

/** Quoted cells blanked out, since they may hold separators and line breaks of their own. */
const unquoted = (text: string): string => text.slice(0, 20_000).replace(/"(?:[^"]|"")*"/g, 'x');

/** The first cell with a letter that is not in UTF-8; null when all are. */
export function firstNotUtf8(bytes: Uint8Array): { rowNumber: number; column: string } | null {
  const table = readTable(new TextDecoder('utf-8').decode(bytes));
  if (!table.ok) return null;
  for (const { rowNumber, cells } of table.rows) {
    const at = cells.findIndex((cell) => cell.includes('\uFFFD'));
    if (at < 0) continue;
    const label = table.rows[0]?.cells[at] ?? '';
    return { rowNumber, column: label === '' ? String(at + 1) : label };
  }
  return null;
}

/**
 * The text of an uploaded file. Spreadsheets save UTF-8, UTF-16 with a byte order mark, or the old
 * Western code page; a wrong guess would garble names, so invalid UTF-8 falls back to the last.
 */
export function decodeTable(bytes: Uint8Array): {
  text: string;
  encoding: 'utf-8' | 'utf-16' | 'windows-1252';
} {
  if (bytes[0] === 0xff && bytes[1] === 0xfe)
    return { text: new TextDecoder('utf-16le').decode(bytes), encoding: 'utf-16' };
  if (bytes[0] === 0xfe && bytes[1] === 0xff)
    return { text: new TextDecoder('utf-16be').decode(bytes), encoding: 'utf-16' };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'utf-8' };
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'windows-1252' };
  }
}

/** A spreadsheet's own file (a zip or the older binary), which must first be saved as CSV. */
export function looksLikeWorkbook(bytes: Uint8Array): boolean {
  const zip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  const oldBinary = bytes[0] === 0xd0 && bytes[1] === 0xcf;
  return zip || oldBinary;
}
