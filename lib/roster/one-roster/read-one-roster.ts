import { problemList, type FileProblem, type ProblemList } from '../file-problem';
import { openZip } from '../open-zip';
import {
  manifestName,
  oneRosterTableNames,
  oneRosterTables,
  type OneRosterTable,
  type TransferMode,
} from './fields';
import { classesOf, type OneRosterClass } from './classes-of';
import { readCsv, type CsvRow } from './read-csv';
import { readManifest } from './read-manifest';

export type OneRosterRead =
  | { ok: true; mode: TransferMode; classes: readonly OneRosterClass[] }
  | { ok: false; problems: readonly FileProblem[] };

const wanted: ReadonlySet<string> = new Set([manifestName, ...oneRosterTableNames]);

/**
 * The classes of a OneRoster 1.2 zip with their students. All problems are collected; with any, nothing
 * is taken. `today` ("2026-11-26") tells which enrolments have ended.
 */
export function readOneRoster(zipName: string, bytes: Uint8Array, today: string): OneRosterRead {
  const problems = problemList();
  const classes = read(zipName, bytes, today, problems);
  return classes === null || problems.all().length > 0
    ? { ok: false, problems: problems.all() }
    : { ok: true, ...classes };
}

function read(
  zipName: string,
  bytes: Uint8Array,
  today: string,
  problems: ProblemList,
): { mode: TransferMode; classes: OneRosterClass[] } | null {
  const zip = openZip(zipName, bytes, wanted, problems);
  const modes = zip && readManifest(zip.files, zip.folders, zipName, problems);
  if (zip === null || modes === null) return null;
  const tables = new Map<OneRosterTable, readonly CsvRow[]>();
  for (const [table, mode] of modes) {
    const file = zip.files.get(table);
    if (file === undefined) continue;
    const rows = readCsv(table, file, oneRosterTables[table], problems);
    if (rows === null) continue;
    checkIds(table, rows, problems);
    checkStatus(table, rows, mode, problems);
    tables.set(table, rows);
  }
  if (problems.all().length > 0) return null;
  const rowsOf = (table: OneRosterTable): readonly CsvRow[] => tables.get(table) ?? [];
  const mode = modes.get('enrollments.csv') ?? 'bulk';
  return {
    mode,
    classes: classesOf(
      {
        users: rowsOf('users.csv'),
        classes: rowsOf('classes.csv'),
        enrollments: rowsOf('enrollments.csv'),
        roles: rowsOf('roles.csv'),
        classesAreListed: modes.has('classes.csv') && modes.get('classes.csv') !== 'delta',
      },
      today,
      problems,
    ),
  };
}

function checkIds(table: string, rows: readonly CsvRow[], problems: ProblemList): void {
  const seen = new Map<string, number>();
  for (const { row, cell } of rows) {
    const id = cell('sourcedId');
    const earlier = seen.get(id);
    if (id === '') continue;
    if (earlier === undefined) seen.set(id, row);
    else {
      const message = `the same as in row ${String(earlier)}. Each row needs an id of its own.`;
      problems.add(table, row, 'sourcedId', message);
    }
  }
}

/** Only a delta says of each row what became of it; a whole table leaves the cell empty. */
function checkStatus(
  table: string,
  rows: readonly CsvRow[],
  mode: TransferMode,
  problems: ProblemList,
): void {
  const known = mode === 'delta' ? ['active', 'tobedeleted'] : ['', 'active', 'tobedeleted'];
  for (const { row, cell } of rows) {
    const status = cell('status');
    if (known.includes(status)) continue;
    const message =
      status === ''
        ? 'empty. In a file of changes (delta) each row says active or tobedeleted.'
        : `“${status}” is neither active nor tobedeleted.`;
    problems.add(table, row, 'status', message);
  }
}
