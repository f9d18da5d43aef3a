import type { Quantity } from '../reckoning';

/** What the lesson "align-on-two-stars" asks of the engine beyond what all lessons may. */
export const alignOnTwoStarsQuantities: Readonly<Record<string, Quantity>> = {};
