import type { Random } from './random';

/** No evening is drawn from the far tails: it is to be learned from, not to be lost. */
const farthestInDeviations = 2;

/** Normally distributed about 0, without the far tails (Box and Muller 1958; Knuth, TAOCP vol. 2, §3.4.1). */
export function normal(random: Random, deviation: number): number {
  for (;;) {
    const size = Math.sqrt(-2 * Math.log(1 - random.next()));
    const value = size * Math.cos(2 * Math.PI * random.next());
    if (Math.abs(value) <= farthestInDeviations) return deviation * value;
  }
}
