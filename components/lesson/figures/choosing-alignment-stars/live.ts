import type { LiveFigures } from '../figure-registry';

export const choosingAlignmentStarsLive: LiveFigures<'choosing-alignment-stars'> = {
  'separation-and-hit-rate': async () => (await import('./separation-figure')).SeparationFigure,
  'altitude-limits': async () => (await import('./altitude-figure')).AltitudeFigure,
};
