/**
 * Turns the tables under content/stars/source into content/stars/catalogue.json.
 * Run with `npx tsx lib/commands/compile-content.ts` after any of them changes.
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { parse } from 'csv-parse/sync';
import { z } from 'zod';
import type { CompactCatalogue } from '../sky/catalogue';

const starsFolder = path.join(process.cwd(), 'content', 'stars');

const decimal = z.stringFormat('decimal', /^-?\d+(\.\d+)?$/).transform(Number);
const starRow = z.object({
  hr: z.union([z.literal('').transform(() => 0), decimal]),
  hip: decimal,
  ra_deg: decimal,
  dec_deg: decimal,
  pmra_masyr: decimal,
  pmdec_masyr: decimal,
  vmag: decimal,
  bv: z.union([z.literal('').transform(() => null), decimal]),
  bayer: z.string().regex(/^[^,]*$/),
  con: z.string().length(3),
  flags: z.string(),
});
const nameRow = z.object({ name: z.string().min(1), hip: decimal });
const figureRow = z.object({
  con: z.string().length(3),
  hr_list: z.string().transform((list) => list.split(' ').map(Number)),
});
const constellationRow = z.object({ abbr: z.string().length(3), name: z.string() });

function table<Row>(file: string, row: z.ZodType<Row>): Row[] {
  const content = readFileSync(path.join(starsFolder, 'source', file));
  return z.array(row).parse(parse(content, { columns: true }));
}

/** Names of a fainter component that the table gives with the number of the whole double star. */
const namesOfCompanions = new Set(['Pulcherrima']);

/** Whole units of the last decimal; the source carries no more digits than this keeps. */
const inUnits = (value: number, perUnit: number): number =>
  // Adding 0 turns −0, which JSON cannot hold, into 0.
  Math.round(value * perUnit) + 0;

export function compileCatalogue(): CompactCatalogue {
  const stars = table('stars.csv', starRow);
  const names = table('star-names.csv', nameRow).filter(({ name }) => !namesOfCompanions.has(name));
  const figures = table('constellation-lines.csv', figureRow);
  const constellations = table('constellation-names.csv', constellationRow).map(({ abbr }) => abbr);

  const find = <T>(values: readonly T[], value: T): number => {
    const index = values.indexOf(value);
    if (index === -1) throw new Error(`${String(value)} is not in the tables`);
    return index;
  };
  const hip = stars.map((star) => star.hip);
  const hr = stars.map((star) => star.hr);
  if (new Set(names.map((named) => named.hip)).size < names.length) {
    throw new Error('star-names.csv gives two names to one star');
  }
  const linesOf = new Map<string, number[][]>();
  for (const figure of figures) {
    const line = figure.hr_list.map((number) => find(hr, number));
    linesOf.set(figure.con, [...(linesOf.get(figure.con) ?? []), line]);
  }

  const columns = {
    constellations,
    hip,
    hr,
    ra: stars.map((star) => inUnits(star.ra_deg, 1e7)),
    dec: stars.map((star) => inUnits(star.dec_deg, 1e7)),
    pmRa: stars.map((star) => inUnits(star.pmra_masyr, 100)),
    pmDec: stars.map((star) => inUnits(star.pmdec_masyr, 100)),
    magnitude: stars.map((star) => inUnits(star.vmag, 100)),
    colourIndex: stars.map((star) => (star.bv === null ? null : inUnits(star.bv, 100))),
    constellation: stars.map((star) => find(constellations, star.con)),
    bayer: stars.map((star) => star.bayer).join(','),
    names: names.map(({ name, hip: number }): [number, string] => [find(hip, number), name]),
    variables: stars.flatMap((star, i) => (star.flags.split(' ').includes('varmax') ? [i] : [])),
    figures: [...linesOf].map(([con, lines]): [number, number[][]] => [
      find(constellations, con),
      lines,
    ]),
  };
  const version = createHash('sha256').update(JSON.stringify(columns)).digest('hex').slice(0, 12);
  return { format: 1, version, ...columns };
}

if (process.argv[1]?.endsWith('compile-content.ts') === true) {
  const catalogue = compileCatalogue();
  const text = `${JSON.stringify(catalogue)}\n`;
  writeFileSync(path.join(starsFolder, 'catalogue.json'), text);
  console.log(
    `catalogue ${catalogue.version}: ${String(catalogue.hip.length)} stars, ` +
      `${String(text.length)} characters, ${String(gzipSync(text, { level: 9 }).length)} bytes with gzip`,
  );
}
