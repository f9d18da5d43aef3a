import type { LiveFigures } from '../figure-registry';

export const levelEnoughLive: LiveFigures<'level-enough'> = {
  'three-legs-one-bubble': async () => (await import('./legs-figure')).LegsFigure,
  'vial-half-turn': async () => (await import('./half-turn-figure')).HalfTurnFigure,
  'cost-of-a-lean': async () => (await import('./lean-figure')).LeanFigure,
};
