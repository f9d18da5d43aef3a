import type { Quantity } from '../reckoning';

/** What the lesson "what-went-wrong" asks of the engine beyond what all lessons may. */
export const whatWentWrongQuantities: Readonly<Record<string, Quantity>> = {};
