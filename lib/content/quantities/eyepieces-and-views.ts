import type { Quantity } from '../reckoning';

/** What the lesson "eyepieces-and-views" asks of the engine beyond what all lessons may. */
export const eyepiecesAndViewsQuantities: Readonly<Record<string, Quantity>> = {};
