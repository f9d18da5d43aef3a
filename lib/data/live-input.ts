import { z } from 'zod';

/** How a live board is asked for: all of it stands in the address, so that a projector keeps its choice. */
export type LiveOptions = {
  /** 'hidden': card numbers stand instead, and no name leaves the server. */
  names: 'shown' | 'hidden';
  order: 'need' | 'card';
  size: 'normal' | 'large';
  /** Only this group's students; null: the whole class. */
  group: string | null;
  /** Only who is at this assignment, or has just handed it in. */
  assignment: string | null;
};

const id = z
  .string()
  .max(100)
  .transform((value) => (value === '' ? null : value))
  .nullable()
  .catch(null);

const liveOptionsSchema = z.object({
  names: z.enum(['shown', 'hidden']).catch('shown'),
  order: z.enum(['need', 'card']).catch('need'),
  size: z.enum(['normal', 'large']).catch('normal'),
  group: id,
  assignment: id,
});

/** Reads an address; whatever cannot be read stands at its usual value. */
export const readLiveOptions = (query: Readonly<Record<string, unknown>>): LiveOptions =>
  liveOptionsSchema.parse({ group: null, assignment: null, ...query });
