import type { LiveFigures } from '../figure-registry';

export const standingItUpLive: LiveFigures<'standing-it-up'> = {
  'what-rests-on-what': async () => (await import('./steps-figure')).StepsFigure,
  'foot-triangle': async () => (await import('./triangle-figure')).TriangleFigure,
  'closing-legs': async () => (await import('./closing-figure')).ClosingFigure,
};
