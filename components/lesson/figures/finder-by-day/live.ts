import type { LiveFigures } from '../figure-registry';

export const finderByDayLive: LiveFigures<'finder-by-day'> = {};
