import { z } from 'zod';

const instant = z.iso.datetime();

/** A tile in words, as it goes to the page. Times are UTC, ISO 8601; the page says how long ago. */
const tileSchema = z.object({
  cardNumber: z.number(),
  /** The name, or "Card 5" while names are hidden. */
  label: z.string(),
  href: z.string().nullable(),
  state: z.enum(['needs-help', 'working', 'here', 'done', 'away']),
  /** Null of somebody who is merely not here. */
  where: z.string().nullable(),
  detail: z.string().nullable(),
  sinceAt: instant.nullable(),
  need: z.object({ text: z.string(), sinceAt: instant.nullable() }).nullable(),
  gates: z.object({ text: z.string(), href: z.string().nullable() }).nullable(),
  last: z.object({ text: z.string(), at: instant }).nullable(),
});
export type LiveTileView = z.infer<typeof tileSchema>;

const boardSchema = z.object({ tiles: z.array(tileSchema), leftOut: z.number() });
export type LiveBoardView = z.infer<typeof boardSchema>;

/** What an event of the stream carries: the server's clock, and the board where it changed. */
export const liveMessageSchema = z.object({ at: instant, board: boardSchema.optional() });
export type LiveMessage = z.infer<typeof liveMessageSchema>;
