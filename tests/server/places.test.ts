import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { db } from '@/lib/data/db';
import { defaultPlace } from '@/lib/data/default-evening';
import { importPlaces } from '@/lib/data/import-places';
import { getPlace, searchPlaces } from '@/lib/data/places';
import { useSchoolDatabase } from '../support/school-database';
import { monday } from '../support/school';

useSchoolDatabase();
let imported: number;
beforeAll(async () => {
  imported = await importPlaces(monday);
}, 240_000);

const found = async (query: string, limit?: number) =>
  (await searchPlaces(query, limit)).map(({ name, country }) => `${name}, ${country}`);

test('the whole gazetteer comes in, once', async () => {
  // The line count of the file is the published source's: 74,380 places of 3,000 people and more.
  expect(imported).toBe(74_380);
  expect(await importPlaces(monday)).toBe(74_380);
  expect(await db().place.count()).toBe(74_380);
});

describe('a search', () => {
  test('finds the name itself before larger places that begin with it', async () => {
    expect((await found('bath'))[0]).toBe('Bath, GB');
    expect((await found('york'))[0]).toBe('York, GB');
  });

  test('ranks by population among equals and among beginnings', async () => {
    const places = await searchPlaces('san', 20);
    const longer = places.filter(({ name }) => name.length > 3);
    const populations = longer.map(({ population }) => population);
    expect(populations).toEqual(populations.toSorted((a, b) => b - a));
    expect(longer.length).toBeGreaterThan(5);
  });

  test.each([
    ['sao paulo', 'São Paulo, BR'],
    ['SÃO PAULO', 'São Paulo, BR'],
    ['koln', 'Köln, DE'],
    ['Koeln', 'Köln, DE'],
    ['lodz', 'Łódź, PL'],
    ['saint-etienne', 'Saint-Étienne, FR'],
    ['york, us', 'York, US'],
  ])('"%s" finds %s', async (query, place) => {
    expect(await found(query)).toContain(place);
  });

  test('stays in the country that is named', async () => {
    const countries = new Set((await searchPlaces('york, us')).map(({ country }) => country));
    expect([...countries]).toEqual(['US']);
  });

  test('of nothing finds nothing, and a limit is kept', async () => {
    expect(await found('')).toEqual([]);
    expect(await found(' ,;% ')).toEqual([]);
    expect(await found('%')).toEqual([]);
    expect(await found('a', 3)).toHaveLength(3);
    expect((await found('a', 10_000)).length).toBeLessThanOrEqual(50);
  });

  test('reads an index, not the table', async () => {
    const plan = await db().$queryRaw`
      EXPLAIN QUERY PLAN SELECT "id", "name" FROM "Place"
      WHERE ("foldedName" > 'york' AND "foldedName" < 'yorkz')
        OR ("foldedAscii" > 'york' AND "foldedAscii" < 'yorkz')
      ORDER BY "population" DESC, "id" ASC LIMIT 12`;
    const steps = z
      .array(z.object({ detail: z.string() }))
      .parse(plan)
      .map(({ detail }) => detail);
    expect(steps.join('\n')).toContain('USING INDEX Place_foldedName_idx');
    expect(steps.filter((step) => step.startsWith('SCAN'))).toEqual([]);
  });
});

test('a place is had by its number; what is no number has none', async () => {
  const [london] = await searchPlaces('london', 1);
  expect(await getPlace(london?.id ?? 0)).toEqual(london);
  expect(london).toMatchObject({ timeZone: 'Europe/London', country: 'GB' });
  for (const id of [0, -1, 1.5, Number.NaN, 1e12]) expect(await getPlace(id)).toBeNull();
});

test('the town that stands in where nothing is known is where the gazetteer has it', async () => {
  const [town] = await searchPlaces(`${defaultPlace.name}, ${defaultPlace.country}`, 1);
  expect(town).toMatchObject({ name: defaultPlace.name, timeZone: defaultPlace.timeZone });
  expect(town?.latitudeDeg).toBeCloseTo(defaultPlace.latitudeDeg, 1);
  expect(town?.longitudeDeg).toBeCloseTo(defaultPlace.longitudeDeg, 1);
});
