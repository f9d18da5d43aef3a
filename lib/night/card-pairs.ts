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
