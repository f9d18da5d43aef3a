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

/**
 * What school lists call a number or code of their own. A bare "No." is left out: it is as often the
 * row's number, which changes from list to list.
 */
const idHeader = new RegExp(
  [
    '^(?:',
    'sourced[ _-]?id|id(?:[ _-]?(?:no\\.?|nr\\.?|number|code))?|identifier',
    "|(?:student|pupil|learner|school|admissions?|regist(?:er|ration)|candidate|user)(?:[’']?s)?[ _-]*",
    '(?:id(?:[ _-]?(?:no\\.?|number))?|no\\.?|nr\\.?|num|number|code|ref\\.?|reference|identifier)',
    ')$',
  ].join(''),
  'i',
);
const saysId = (label: string): boolean => idHeader.test(label.trim());
/** Heads of columns that hold half a name; as a whole cell only, as somebody may be called one of these. */
const halfNameHeader = /^(first|last|given|family|forenames?|surname)$/i;

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
      (nameWords.test(cell.toLowerCase()) ||
        saysId(cell) ||
        halfNameHeader.test(cell.trim()) ||
        kindOfHeader(cell) !== null) &&
      kindOfCell(cell) === null,
  );
}

export function rosterColumns(rows: readonly TableRow[], hasHeader: boolean): RosterColumn[] {
  const body = hasHeader ? rows.slice(1) : rows;
  const width = Math.max(0, ...rows.map((row) => row.cells.length));
  return Array.from({ length: width }, (_, index) => {
    const header = hasHeader ? (rows[0]?.cells[index] ?? '') : '';
    const cells = body.map((row) => row.cells[index] ?? '').filter((cell) => cell !== '');
    const ofCells = kindOfMost(cells);
    // Seven digits look like a telephone number; under a head that says "id" they are one of those.
    const personal =
      kindOfHeader(header) ?? (ofCells === 'phone' && saysId(header) ? null : ofCells);
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

/**
 * Of the rows, the least share that must have an id which no other row has, for the column to be proposed
 * (our judgement): a few rows that repeat or lack theirs are told of, each by its number.
 */
const leastShareWithId = 0.75;

/** A column that says of itself that it is an id, and has another in nearly each row; null when none does. */
export function guessIdColumn(
  rows: readonly TableRow[],
  columns: readonly RosterColumn[],
): number | null {
  const body = rows.slice(1);
  const named = columns.find(({ index, label, personal }) => {
    if (personal !== null || !saysId(label)) return false;
    const ids = body.map((row) => row.cells[index] ?? '').filter((id) => id !== '');
    return body.length > 0 && new Set(ids).size >= body.length * leastShareWithId;
  });
  return named?.index ?? null;
}

/** The column most likely to hold the name to show, or null when every column is personal or empty. */
export function guessNameColumn(columns: readonly RosterColumn[]): number | null {
  const open = columns.filter((column) => column.personal === null);
  const preferred =
    open.find((column) =>
      /display|pseudonym|alias|nick|preferred|known as/.test(column.label.toLowerCase()),
    ) ??
    open.find(({ label }) => nameWords.test(label.toLowerCase()) && !saysId(label)) ??
    // A column of bare numbers is a register number, not a name.
    open.find(
      ({ label, samples }) => !saysId(label) && samples.some((cell) => /\p{L}/u.test(cell)),
    ) ??
    open[0];
  return preferred?.index ?? null;
}
