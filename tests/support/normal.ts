import type { Random } from '@/lib/variants/random';

/** Normally distributed numbers of mean 0 and deviation 1. Source: Box & Muller 1958. */
export const normalFrom =
  ({ next }: Random) =>
  (): number =>
    Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
