'use server';

import { z } from 'zod';
import type { Place } from '@/lib/data/places';
import { searchPlaces } from '@/lib/data/places';

/** Towns for the form. Anyone may ask: the list is open data. */
export async function findPlacesForVisitor(query: unknown): Promise<Place[]> {
  const parsed = z.string().min(2).max(100).safeParse(query);
  return parsed.success ? searchPlaces(parsed.data) : [];
}
