export type Place = {
  id: number;
  name: string;
  /** ISO 3166 two-letter code. */
  country: string;
  region: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  timeZone: string;
  population: number;
};

export async function searchPlaces(query: string, limit = 12): Promise<Place[]> {
  throw new Error(`not written yet ${query} ${limit}`);
}
export async function getPlace(id: number): Promise<Place | null> {
  throw new Error('not written yet');
}
