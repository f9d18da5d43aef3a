import type { Quantity } from '../reckoning';

/** What the lesson "clock-and-place" asks of the engine beyond what all lessons may. */
export const clockAndPlaceQuantities: Readonly<Record<string, Quantity>> = {};
