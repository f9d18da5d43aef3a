import type { LiveFigures } from '../figure-registry';

export const finderByDayLive: LiveFigures<'finder-by-day'> = {
  'two-lines-of-sight': async () => (await import('./sight-figure')).SightFigure,
  'dot-and-screws': async () => (await import('./screw-figure')).ScrewFigure,
};
