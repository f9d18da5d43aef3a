import type { Quantity } from '../reckoning';

/** What the lesson "standing-it-up" asks of the engine beyond what all lessons may. */
export const standingItUpQuantities: Readonly<Record<string, Quantity>> = {};
