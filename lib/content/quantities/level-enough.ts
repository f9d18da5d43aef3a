import type { Quantity } from '../reckoning';

/** What the lesson "level-enough" asks of the engine beyond what all lessons may. */
export const levelEnoughQuantities: Readonly<Record<string, Quantity>> = {};
