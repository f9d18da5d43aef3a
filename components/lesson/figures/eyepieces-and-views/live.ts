import type { LiveFigures } from '../figure-registry';

export const eyepiecesAndViewsLive: LiveFigures<'eyepieces-and-views'> = {
  'sky-in-the-eyepiece': async () => (await import('./view-figure')).ViewFigure,
  'which-way-round': async () => (await import('./way-round-figure')).WayRoundFigure,
};
