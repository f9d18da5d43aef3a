import type { TableRow } from './read-table';

/** What a column seems to hold that this product never stores. */
export type PersonalKind =
  'email' | 'birth-date' | 'phone' | 'address' | 'password' | 'gender' | 'guardian';

export type RosterColumn = {
  index: number;
  /** The header's word, else "Column 3". */
  label: string;
  /** Up to three cells; none of a personal column, which is not shown either. */
  samples: readonly string[];
  personal: PersonalKind | null;
};

const headerWords: readonly (readonly [PersonalKind, RegExp])[] = [
  ['email', /e-?mail|courriel|correo/],
  ['birth-date', /birth|\bdob\b|\bborn\b|\bage\b|geburt|naissance|nacimiento/],
  ['phone', /phone|mobile|\btel\b|\bcell\b|telefon/],
  ['guardian', /guardian|parent|mother|father|emergency|contact/],
  ['address', /address|street|post ?code|\bzip\b|\bcity\b|\btown\b|adresse/],
  ['password', /password|passcode|\bpin\b/],
  ['gender', /gender|\bsex\b|pronoun/],
];
const nameWords =
  /name|student|pupil|learner|pseudonym|alias|nick|vorname|nachname|prénom|\bnom\b|nombre|apellido/;

const idHeader = /^(sourced ?id|(student|pupil|learner)?[ _-]?id)$/i;

const email = /^[^\s@]+@[^\s@]+\.[^\s@]+$/;
const date = /^(\d{1,4}[./-]\d{1,2}[./-]\d{1,4})$/;
const phone = /^\+?[\d ()./-]{7,}$/;

function kindOfCell(cell: string): PersonalKind | null {
  if (email.test(cell)) return 'email';
  if (date.test(cell)) return 'birth-date';
  return phone.test(cell) ? 'phone' : null;
}

function kindOfHeader(cell: string): PersonalKind | null {
  const words = cell.toLowerCase();
  return headerWords.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
}

/** Whether the first row names columns rather than a student. */
export function guessHeaderRow(rows: readonly TableRow[]): boolean {
  const first = rows[0];
  if (!first || rows.length < 2) return false;
  return first.cells.some(
    (cell) =>
      (nameWords.test(cell.toLowerCase()) || kindOfHeader(cell) !== null) &&
      kindOfCell(cell) === null,
  );
}

export function rosterColumns(rows: readonly TableRow[], hasHeader: boolean): RosterColumn[] {
  const body = hasHeader ? rows.slice(1) : rows;
  const width = Math.max(0, ...rows.map((row) => row.cells.length));
  return Array.from({ length: width }, (_, index) => {
    const header = hasHeader ? (rows[0]?.cells[index] ?? '') : '';
    const cells = body.map((row) => row.cells[index] ?? '').filter((cell) => cell !== '');
    const personal = kindOfHeader(header) ?? kindOfMost(cells);
    return {
      index,
      label: header === '' ? `Column ${String(index + 1)}` : header,
      samples: personal === null ? cells.slice(0, 3) : [],
      personal,
    };
  });
}

/** More than half, so that one odd cell neither hides a list of names nor lets a list of addresses in. */
function kindOfMost(cells: readonly string[]): PersonalKind | null {
  const kinds = cells.map(kindOfCell);
  const first = kinds.find((kind) => kind !== null) ?? null;
  return first !== null && kinds.filter((kind) => kind === first).length * 2 > cells.length
    ? first
    : null;
}

/** A column that says of itself that it is an id, and has another in each row; null when none does. */
export function guessIdColumn(
  rows: readonly TableRow[],
  columns: readonly RosterColumn[],
): number | null {
  const named = columns.find(
    ({ label, personal }) => personal === null && idHeader.test(label.trim()),
  );
  if (named === undefined) return null;
  const ids = rows.slice(1).map((row) => row.cells[named.index] ?? '');
  return ids.every((id) => id !== '') && new Set(ids).size === ids.length ? named.index : null;
}

/** The column most likely to hold the name to show, or null when every column is personal or empty. */
export function guessNameColumn(columns: readonly RosterColumn[]): number | null {
  const open = columns.filter((column) => column.personal === null);
  const preferred =
    open.find((column) =>
      /display|pseudonym|alias|nick|preferred|known as/.test(column.label.toLowerCase()),
    ) ??
    open.find(({ label }) => nameWords.test(label.toLowerCase()) && !idHeader.test(label.trim())) ??
    // A column of bare numbers is a register number, not a name.
    open.find((column) => column.samples.some((cell) => /\p{L}/u.test(cell))) ??
    open[0];
  return preferred?.index ?? null;
}
