import { withoutNoise } from './counted-mark';

/**
 * What the criteria of a piece of work come to, 0–100. Shares of a criterion are binary fractions: without
 * this, all of them together could read 100.00000000000001, and differ from itself once stored.
 */
export const totalOf = (criteria: readonly { earned: number }[]): number =>
  withoutNoise(criteria.reduce((sum, { earned }) => sum + earned, 0));
