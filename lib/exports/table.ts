/** Rows of a file for a spreadsheet: text, numbers that stay numbers, and null for an empty cell. */
export type Cell = string | number | null;
export type Table = readonly (readonly Cell[])[];

/** "2026-11-30 09:00:00": how spreadsheets read an instant; its head says that it is UTC. */
export const instantCell = (at: Date): string => at.toISOString().slice(0, 19).replace('T', ' ');
