import type { LiveFigures } from '../figure-registry';

export const theNightLive: LiveFigures<'the-night'> = {
  'from-sunset-to-dark': async () => (await import('./dusk-figure')).DuskFigure,
  'eyes-in-the-dark': async () => (await import('./eyes-figure')).EyesFigure,
  'dew-on-glass': async () => (await import('./dew-figure')).DewFigure,
  'packing-up': async () => (await import('./pack-figure')).PackFigure,
};
