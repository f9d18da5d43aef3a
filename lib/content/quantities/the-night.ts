import type { Quantity } from '../reckoning';

/** What the lesson "the-night" asks of the engine beyond what all lessons may. */
export const theNightQuantities: Readonly<Record<string, Quantity>> = {};
