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
    return {
      // The file's order: an id means the same place as long as the file is the same.
      id: index + 1,
      name: place.name,
      foldedName,
      foldedAscii: place.ascii === '' ? foldedName : fold(place.ascii),
      country: place.country,
      region: place.region,
      latitudeDeg: place.lat_deg,
      longitudeDeg: place.lon_deg_east,
      elevationM: place.elev_m,
      timeZone: place.tz,
      population: place.population,
    };
  });
  // All or nothing, so that an interrupted start begins anew.
  await db().$transaction(
    async (transaction) => {
      await transaction.place.deleteMany();
      for (let start = 0; start < places.length; start += chunk) {
        await transaction.place.createMany({ data: places.slice(start, start + chunk) });
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
