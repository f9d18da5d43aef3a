import type { PairSkyPlaces } from './pair-sky-places';

/** A light's letter in the table, null where it is too faint to be listed. */
export const letterIn = (places: Pick<PairSkyPlaces, 'labelled'>, id: string): string | null =>
  places.labelled.find((light) => light.id === id)?.letter ?? null;
