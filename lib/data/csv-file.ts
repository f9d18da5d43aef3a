import { stringify } from 'csv-stringify/sync';
import type { Table } from '../exports/table';
import { csvText } from './csv-text';

/**
 * A table as RFC 4180 has it, UTF-8 with its mark, so that spreadsheets show names rightly. Numbers stay
 * numbers; every text is made safe to open.
 */
export const csvFile = (table: Table): string =>
  stringify(
    table.map((row) => row.map((cell) => (typeof cell === 'string' ? csvText(cell) : cell))),
    { bom: true, record_delimiter: 'windows' },
  );
