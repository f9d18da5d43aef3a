import { readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { z } from 'zod';

/** The rows of a table under tests/reference/data. */
export function fixtureRows<Row>(file: string, row: z.ZodType<Row>): Row[] {
  const content = readFileSync(path.join(import.meta.dirname, 'data', file));
  return z
    .array(row)
    .min(1)
    .parse(parse(content, { columns: true }));
}

export const decimal = z
  .string()
  .regex(/^[+-]?\d+(\.\d+)?$/)
  .transform(Number);
