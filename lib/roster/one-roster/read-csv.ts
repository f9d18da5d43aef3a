import { CsvError, parse } from 'csv-parse/browser/esm/sync';
import type { ProblemList } from '../file-problem';

/** A whole school's enrolments; more would make the page wait. */
export const mostCsvRows = 50_000;

/** The cells of the asked-for columns, trimmed; '' where a column is missing. */
export type CsvRow = { row: number; cell: (column: string) => string };

/**
 * Reads one file of a OneRoster zip: RFC 4180 with commas, UTF-8 with or without a byte order mark. Of
 * each row only the columns asked for are kept. null when it cannot be read at all.
 */
export function readCsv(
  file: string,
  bytes: Uint8Array,
  columns: { required: readonly string[]; optional: readonly string[] },
  problems: ProblemList,
): readonly CsvRow[] | null {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    problems.add(file, 1, null, 'it is written in UTF-16. Save it as CSV in UTF-8.');
    return null;
  }
  const text = new TextDecoder('utf-8').decode(bytes);
  const records = recordsOf(file, text, problems);
  const header = records?.[0]?.map((name) => name.trim());
  if (records === null || header === undefined) {
    if (records !== null) problems.add(file, 1, null, 'it is empty. Its first row names columns.');
    return null;
  }
  if (records.length - 1 > mostCsvRows) {
    problems.add(
      file,
      mostCsvRows + 2,
      null,
      `more rows than are read (${String(mostCsvRows)}). Ask for an export of one class or one year.`,
    );
    return null;
  }
  const places = new Map<string, number>();
  for (const column of [...columns.required, ...columns.optional]) {
    const at = header.indexOf(column);
    if (at >= 0) places.set(column, at);
    else if (columns.required.includes(column)) {
      problems.add(
        file,
        1,
        column,
        'the first row does not name this column, which OneRoster 1.2 requires. Capitals count.',
      );
    }
  }
  if (columns.required.some((column) => !places.has(column))) return null;

  const wanted = [...places];
  const indexOf = new Map(wanted.map(([column], index) => [column, index]));
  const rows: CsvRow[] = [];
  for (const [index, record] of records.entries()) {
    const row = index + 1;
    if (index === 0 || record.every((cell) => cell.trim() === '')) continue;
    const kept = wanted.map(([, at]) => (record[at] ?? '').trim());
    for (const [at, [column]] of wanted.entries()) {
      const cell = kept[at] ?? '';
      if (cell === '' && columns.required.includes(column)) {
        problems.add(file, row, column, 'empty, and it must not be. Fill it in.');
      } else if (cell.includes('\uFFFD')) {
        // The decoder's mark for bytes that are no UTF-8, in this file or in one it was made of.
        problems.add(file, row, column, 'a letter is not in UTF-8. Save the file as CSV in UTF-8.');
      } else if (cell.includes('\0')) {
        problems.add(file, row, column, 'not plain text. Save the file as CSV in UTF-8.');
      }
    }
    rows.push({ row, cell: (column) => kept[indexOf.get(column) ?? -1] ?? '' });
  }
  return rows;
}

function recordsOf(file: string, text: string, problems: ProblemList): string[][] | null {
  try {
    return parse(text, {
      bom: true,
      relax_column_count: true,
      // One more than is read, to know that there are more.
      to: mostCsvRows + 2,
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const row = rowOfCsvError(error);
    problems.add(
      file,
      row,
      null,
      'a quotation mark (") stands where none may, or is never closed. Double it or take it away.',
    );
    return null;
  }
}

/** The row in which csv-parse stopped: one after those it had finished. */
export function rowOfCsvError(error: CsvError): number | null {
  return 'records' in error && typeof error.records === 'number' ? error.records + 1 : null;
}
