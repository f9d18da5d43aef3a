import type { LiveFigures } from '../figure-registry';

export const whatWentWrongLive: LiveFigures<'what-went-wrong'> = {
  'fault-patterns': async () => (await import('./pattern-figure')).PatternFigure,
  'two-suspects': async () => (await import('./two-suspects-figure')).TwoSuspectsFigure,
};
