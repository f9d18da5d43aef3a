import type { LiveFigures } from '../figure-registry';

export const tubeOnAndBalancedLive: LiveFigures<'tube-on-and-balanced'> = {
  'tube-in-its-clamp': async () => (await import('./clamp-figure')).ClampFigure,
  'pull-while-raised': async () => (await import('./pull-figure')).PullFigure,
};
