import type { FigureStills } from '../figure-registry';

export const finderByDayStills: FigureStills<'finder-by-day'> = {};
