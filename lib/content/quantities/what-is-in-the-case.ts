import type { Quantity } from '../reckoning';

/** What the lesson "what-is-in-the-case" asks of the engine beyond what all lessons may. */
export const whatIsInTheCaseQuantities: Readonly<Record<string, Quantity>> = {};
