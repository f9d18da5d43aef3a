import type { LiveFigures } from '../figure-registry';

export const alignOnTwoStarsLive: LiveFigures<'align-on-two-stars'> = {
  'centring-and-play': async () => (await import('./centring-figure')).CentringFigure,
  'agree-and-third': async () => (await import('./spoilt-figure')).SpoiltFigure,
};
