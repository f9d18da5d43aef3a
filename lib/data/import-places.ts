import 'server-only';
import { parse } from 'csv-parse/sync';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gunzipSync } from 'node:zlib';
import { z } from 'zod';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { fold } from './fold';
import { Prisma } from './generated/client';

const rowSchema = z.object({
  name: z.string().min(1),
  ascii: z.string(),
  country: z.string().length(2),
  region: z.string(),
  lat_deg: z.coerce.number().min(-90).max(90),
  lon_deg_east: z.coerce.number().min(-180).max(180),
  elev_m: z.coerce.number().min(-500).max(9000),
  tz: z.string().min(1),
  population: z.coerce.number().int().min(0),
});

/** Rows to one statement: SQLite takes 32,766 values in one, and a row has eleven. */
const chunk = 2500;
const importName = 'places';

type Row = z.output<typeof rowSchema> & { id: number; foldedName: string; foldedAscii: string };

/**
 * Written as plain SQL, which every database knows: through createMany the 74,000 places cost half a
 * minute of computing, and the first start is what everybody waits for.
 */
const insertOf = (places: readonly Row[]) => {
  const values = places.map(
    (p) =>
      Prisma.sql`(${p.id}, ${p.name}, ${p.foldedName}, ${p.foldedAscii}, ${p.country}, ${p.region}, ${p.lat_deg}, ${p.lon_deg_east}, ${p.elev_m}, ${p.tz}, ${p.population})`,
  );
  return Prisma.sql`INSERT INTO "Place" ("id", "name", "foldedName", "foldedAscii", "country", "region", "latitudeDeg", "longitudeDeg", "elevationM", "timeZone", "population") VALUES ${Prisma.join(values)}`;
};

/** Brings the gazetteer in when it is not there or the file is another one; says how many places. */
export async function importPlaces(clock: Clock = systemClock): Promise<number> {
  const file = path.join(process.cwd(), 'content/places/places.csv.gz');
  const packed = readFileSync(file);
  const version = createHash('sha256').update(packed).digest('hex');
  const before = await db().contentImport.findUnique({ where: { name: importName } });
  if (before?.version === version) return db().place.count();

  const rows: unknown[] = parse(gunzipSync(packed), { columns: true, skip_empty_lines: true });
  const places = rows.map((row, index) => {
    const place = rowSchema.parse(row);
    const foldedName = fold(place.name);
    const foldedAscii = place.ascii === '' ? foldedName : fold(place.ascii);
    // The file's order: an id means the same place as long as the file is the same.
    return { ...place, id: index + 1, foldedName, foldedAscii };
  });
  // All or nothing, so that an interrupted start begins anew.
  await db().$transaction(
    async (transaction) => {
      await transaction.place.deleteMany();
      for (let start = 0; start < places.length; start += chunk) {
        await transaction.$executeRaw(insertOf(places.slice(start, start + chunk)));
      }
      const entry = { version, importedAt: clock.now() };
      await transaction.contentImport.upsert({
        where: { name: importName },
        create: { name: importName, ...entry },
        update: entry,
      });
    },
    { timeout: 120_000 },
  );
  return places.length;
}
