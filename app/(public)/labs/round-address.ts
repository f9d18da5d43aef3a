import { z } from 'zod';
import { routes } from '@/lib/routes';
import type { Lab } from '@/lib/variants/labs';
import { firstRound } from './first-round';

const first = z.union([z.string(), z.array(z.string()).transform((values) => values[0])]);
const filled = first
  .optional()
  .transform((value) => (value === undefined || value === '' ? undefined : value));

/** The page's query. Anything else in it is ignored; what is wrong in it is told by the round's maker. */
const querySchema = z.object({
  seed: filled,
  round: filled,
  kit: filled,
  site: filled,
  place: filled,
  time: filled,
});

/** A visitor's round as its page address tells it. */
export type RoundAddress = {
  seed: string | undefined;
  /** No seed yet, and one is to be drawn. */
  isFirst: boolean;
  kitId: string | undefined;
  siteId: string | undefined;
  placeId: number | undefined;
  localTime: string | undefined;
};

export function readRoundAddress(
  query: Record<string, string | string[] | undefined>,
): RoundAddress {
  const { seed, round, kit, site, place, time } = querySchema.parse(query);
  const placeId = place !== undefined && /^\d{1,9}$/.test(place) ? Number(place) : undefined;
  const isFirst = seed === undefined && round === firstRound.value;
  return { seed, isFirst, kitId: kit, siteId: site, placeId, localTime: time };
}

/** The address under which the same round can be made again. */
export const roundAddress = (
  lab: Lab,
  round: {
    seed: string;
    kitId: string;
    siteId: string;
    placeId: number;
    localTime: string;
  },
): string =>
  routes.labs.one(lab, {
    seed: round.seed,
    kit: round.kitId,
    site: round.siteId,
    place: round.placeId,
    time: round.localTime,
  });
