import type { PlannedPair } from './night-pairs';
import type { CardPair, NightPlan } from './plan-night';

/**
 * The pairs of one telescope through the evening, for a card to take out: from two stars on and then every
 * hour. Where the first ones are poor and a good one comes, the card begins with the good one.
 */
export function cardPairs(plan: Pick<NightPlan, 'hours' | 'goodLater'>, kitId: string): CardPair[] {
  const hourly = plan.hours.flatMap(({ instant, pairs }): CardPair[] => {
    const [pair, spare = null] = pairs.find((one) => one.kitId === kitId)?.pairs ?? [];
    return pair === undefined ? [] : [{ instant, pair, spare }];
  });
  const later = plan.goodLater.find((one) => one.kitId === kitId)?.later ?? null;
  if (later === null) return hourly;
  return [later, ...hourly.filter(({ instant }) => instant > later.instant)];
}

/** What a telescope does from an hour on; no pair: the sky has none for it then. */
export type TelescopeHour = {
  instant: string;
  pair: PlannedPair | null;
  spare: PlannedPair | null;
};

/**
 * All hours of one telescope. Where the first pairs are poor and a good one comes, the first of them is
 * followed by the good one: what is poor is worth knowing once.
 */
export function telescopeHours(
  { hours, goodLater }: Pick<NightPlan, 'hours' | 'goodLater'>,
  kitId: string,
): TelescopeHour[] {
  const hourly = hours.map(({ instant, pairs }): TelescopeHour => {
    const [pair = null, spare = null] = pairs.find((one) => one.kitId === kitId)?.pairs ?? [];
    return { instant, pair, spare };
  });
  const later = goodLater.find((one) => one.kitId === kitId)?.later ?? null;
  if (later === null) return hourly;
  return [...hourly.slice(0, 1), later, ...hourly.filter(({ instant }) => instant > later.instant)];
}
