import type { TableRow } from './read-table';

/** Must agree with what the server accepts. */
export const longestDisplayName = 60;

export type NameProblem =
  | { code: 'empty' }
  | { code: 'too-long'; length: number }
  | { code: 'repeats-row'; rowNumber: number }
  | { code: 'already-there' }
  | { code: 'looks-like-email' };

/** `typed` is the text as it came, for a field to show; `name` is what would be stored. */
export type PreviewRow = {
  rowNumber: number;
  typed: string;
  name: string;
  problem: NameProblem | null;
};

export type ColumnMapping = {
  hasHeader: boolean;
  nameColumn: number;
  /** A second column, put after the first with a space between; null to take one column alone. */
  joinColumn: number | null;
};

/** One line, one kind of space, composed accents: two spellings that look the same are the same. */
export function cleanName(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}]/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
}

/** Names that differ only in capitals or accents' encoding count as the same. */
const sameNameKey = (name: string): string => cleanName(name).toLocaleLowerCase('en');

/** Rows to add, from a table and a mapping. `corrections` holds what the teacher typed over a row. */
export function previewTable(
  rows: readonly TableRow[],
  mapping: ColumnMapping,
  existingNames: readonly string[],
  corrections: ReadonlyMap<number, string> = new Map(),
): PreviewRow[] {
  const body = mapping.hasHeader ? rows.slice(1) : rows;
  return checkNames(
    body.map((row) => ({
      rowNumber: row.rowNumber,
      name:
        corrections.get(row.rowNumber) ??
        [mapping.nameColumn, mapping.joinColumn]
          .map((index) => (index === null ? '' : (row.cells[index] ?? '')))
          .join(' ')
          .trim(),
    })),
    existingNames,
  );
}

/** The same check for names typed one to a line. Blank lines separate; they are no mistake. */
export function previewTyped(text: string, existingNames: readonly string[]): PreviewRow[] {
  const lines = text
    .split(/\r\n|\n|\r/)
    .map((name, index) => ({ rowNumber: index + 1, name }))
    .filter((row) => row.name.trim() !== '');
  return checkNames(lines, existingNames);
}

function checkNames(
  rows: readonly { rowNumber: number; name: string }[],
  existingNames: readonly string[],
): PreviewRow[] {
  const existing = new Set(existingNames.map(sameNameKey));
  const seen = new Map<string, number>();
  return rows.map((row) => {
    const name = cleanName(row.name);
    const key = sameNameKey(name);
    const earlier = seen.get(key);
    if (name !== '' && earlier === undefined) seen.set(key, row.rowNumber);
    return {
      rowNumber: row.rowNumber,
      typed: row.name,
      name,
      problem: problemOf(name, existing.has(key), earlier),
    };
  });
}

function problemOf(
  name: string,
  alreadyThere: boolean,
  earlierRow: number | undefined,
): NameProblem | null {
  if (name === '') return { code: 'empty' };
  if (name.length > longestDisplayName) return { code: 'too-long', length: name.length };
  if (/\S@\S+\.\S/.test(name)) return { code: 'looks-like-email' };
  if (alreadyThere) return { code: 'already-there' };
  return earlierRow === undefined ? null : { code: 'repeats-row', rowNumber: earlierRow };
}

/** What is wrong and what to do, for the row it stands beside. */
export function nameProblemText(problem: NameProblem): string {
  switch (problem.code) {
    case 'empty':
      return 'No name in this row. Type one, or leave the row out.';
    case 'too-long':
      return `${String(problem.length)} characters; at most ${String(longestDisplayName)} fit on a card. Shorten it.`;
    case 'repeats-row':
      return `The same name as row ${String(problem.rowNumber)}. Add an initial or a number.`;
    case 'already-there':
      return 'A student with this name is in the class already. Leave it out, or add an initial.';
    case 'looks-like-email':
      return 'This looks like an email address. Type a name or a pseudonym instead.';
  }
}

export const namesToAdd = (rows: readonly PreviewRow[]): string[] =>
  rows.filter((row) => row.problem === null).map((row) => row.name);
