import type { FigureStills } from '../figure-registry';

export const powerWithoutSmokeStills: FigureStills<'power-without-smoke'> = {};
