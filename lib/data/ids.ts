import { z } from 'zod';

export const idSchema = z.string().min(1).max(100);

/**
 * An id as it came from outside. Whatever an action is called with does, bound arguments too: an object in
 * its place would be a filter to the database, and mean other rows than the one that was asked about.
 * Throws where it is none: no page of ours sends such a thing, so there is nobody to tell.
 */
export const parsedId = (id: unknown): string => idSchema.parse(id);

/** The same where a refusal is answered; null: no id. */
export const idOrNull = (id: unknown): string | null => idSchema.safeParse(id).data ?? null;
