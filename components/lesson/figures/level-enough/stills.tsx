import type { FigureStills } from '../figure-registry';

export const levelEnoughStills: FigureStills<'level-enough'> = {};
