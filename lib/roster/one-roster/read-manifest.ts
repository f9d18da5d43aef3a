import type { ProblemList } from '../file-problem';
import {
  manifestName,
  oneRosterTableNames,
  type OneRosterTable,
  type TransferMode,
} from './fields';
import { readCsv } from './read-csv';

type Modes = ReadonlyMap<OneRosterTable, TransferMode>;

/**
 * What the zip says of itself: OneRoster 1.2, and how each table comes. Tables that are absent have no
 * entry. null when it cannot be gone by.
 */
export function readManifest(
  files: ReadonlyMap<string, Uint8Array>,
  folders: ReadonlySet<string>,
  zipName: string,
  problems: ProblemList,
): Modes | null {
  const bytes = files.get(manifestName);
  if (bytes === undefined) {
    const folder = [...folders][0];
    problems.add(
      zipName,
      null,
      null,
      folder === undefined
        ? 'there is no manifest.csv in it, so this is no OneRoster zip. Choose the file as your school’s office exports it.'
        : `manifest.csv must stand at the top of the zip, not in the folder “${folder}”. Zip the files themselves, not the folder around them.`,
    );
    return null;
  }
  const rows = readCsv(
    manifestName,
    bytes,
    { required: ['propertyName', 'value'], optional: [] },
    problems,
  );
  if (rows === null) return null;
  const said = new Map(rows.map((row) => [row.cell('propertyName'), row]));
  const version = said.get('oneroster.version');
  if (version === undefined || !/^1\.2(\.|$)/.test(version.cell('value'))) {
    problems.add(
      manifestName,
      version?.row ?? null,
      'value',
      version === undefined
        ? 'oneroster.version is not said. Ask for an export in OneRoster 1.2.'
        : `oneroster.version is ${version.cell('value')}; 1.2 is read. Ask for an export in OneRoster 1.2.`,
    );
    return null;
  }
  const modes = new Map<OneRosterTable, TransferMode>();
  for (const table of oneRosterTableNames) {
    const row = said.get(`file.${table.replace('.csv', '')}`);
    const value = row?.cell('value') ?? 'absent';
    if (value === 'bulk' || value === 'delta') {
      modes.set(table, value);
      if (files.has(table)) continue;
      const message = `it says that ${table} is in the zip, and it is not there. Export the zip again.`;
      problems.add(manifestName, row?.row ?? null, 'value', message);
    } else if (value !== 'absent') {
      const message = `“${value}” is none of bulk, delta and absent.`;
      problems.add(manifestName, row?.row ?? null, 'value', message);
    }
  }
  const isDelta = modes.get('enrollments.csv') === 'delta';
  for (const table of oneRosterTableNames) {
    // What changed may leave out the tables in which nothing did.
    if (modes.has(table) || (isDelta && table !== 'enrollments.csv')) continue;
    const row = said.get(`file.${table.replace('.csv', '')}`);
    const message = `${table} is left out, and a class list needs it. Ask for users, roles, classes and enrollments.`;
    problems.add(manifestName, row?.row ?? null, 'value', message);
  }
  return modes;
}
