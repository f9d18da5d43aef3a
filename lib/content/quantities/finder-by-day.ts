import type { Quantity } from '../reckoning';

/** What the lesson "finder-by-day" asks of the engine beyond what all lessons may. */
export const finderByDayQuantities: Readonly<Record<string, Quantity>> = {};
