import 'server-only';
import { db } from './db';
import { fold } from './fold';

export type Place = {
  id: number;
  name: string;
  /** ISO 3166 two-letter code. */
  country: string;
  /** The country's own code of the region. */
  region: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  /** IANA name. */
  timeZone: string;
  population: number;
};

const placeSelect = {
  id: true,
  name: true,
  country: true,
  region: true,
  latitudeDeg: true,
  longitudeDeg: true,
  elevationM: true,
  timeZone: true,
  population: true,
} as const;

/** After every text that starts with the one before it. */
const afterAll = '\u{10FFFF}';

/**
 * Places whose name begins with the query, case and diacritics aside: the name itself first, then the
 * larger ones. "york, us" looks in one country. Part of the index is read, never all 74,000.
 */
export async function searchPlaces(query: string, limit = 12): Promise<Place[]> {
  const [namePart = '', countryPart = ''] = query.slice(0, 100).split(',');
  const name = fold(namePart);
  if (name === '') return [];
  const country = countryPart.trim().toUpperCase();
  const inCountry = /^[A-Z]{2}$/.test(country) ? { country } : {};
  const take = Math.max(1, Math.min(limit, 50));
  const search = (foldedName: object, foldedAscii: object) =>
    db().place.findMany({
      where: { ...inCountry, OR: [{ foldedName }, { foldedAscii }] },
      orderBy: [{ population: 'desc' }, { id: 'asc' }],
      take,
      select: placeSelect,
    });
  const exact = await search({ equals: name }, { equals: name });
  if (exact.length >= take) return exact;
  const longer = { gt: name, lt: name + afterAll };
  const starting = await search(longer, longer);
  const seen = new Set(exact.map(({ id }) => id));
  return [...exact, ...starting.filter(({ id }) => !seen.has(id))].slice(0, take);
}

export const getPlace = (id: number): Promise<Place | null> =>
  Number.isSafeInteger(id)
    ? db().place.findUnique({ where: { id }, select: placeSelect })
    : Promise.resolve(null);
