/** What is wrong in a file, where, and what to do. Rows count as a spreadsheet shows them, from 1. */
export type FileProblem = {
  file: string;
  row: number | null;
  column: string | null;
  message: string;
};

/** Nobody reads more than these, and a file of 50 000 faulty rows must not fill the memory. */
export const mostProblemsShown = 20;
const mostProblemsKept = 1000;

/** Collects all problems of a file rather than stopping at the first. */
export type ProblemList = {
  add: (file: string, row: number | null, column: string | null, message: string) => void;
  all: () => readonly FileProblem[];
};

export function problemList(): ProblemList {
  const kept: FileProblem[] = [];
  return {
    add: (file, row, column, message) => {
      if (kept.length < mostProblemsKept) kept.push({ file, row, column, message });
    },
    all: () => kept,
  };
}

/** "users.csv, row 4, column givenName: …" */
export function problemText({ file, row, column, message }: FileProblem): string {
  const place = [
    file,
    row === null ? null : `row ${String(row)}`,
    column === null ? null : `column ${column}`,
  ].filter((part) => part !== null);
  return `${place.join(', ')}: ${message}`;
}
