import type { Quantity } from '../reckoning';

/** What the lesson "tube-on-and-balanced" asks of the engine beyond what all lessons may. */
export const tubeOnAndBalancedQuantities: Readonly<Record<string, Quantity>> = {};
