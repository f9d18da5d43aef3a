import type { Quantity } from '../reckoning';

/** What the lesson "power-without-smoke" asks of the engine beyond what all lessons may. */
export const powerWithoutSmokeQuantities: Readonly<Record<string, Quantity>> = {};
