import type { LiveFigures } from '../figure-registry';

export const whatIsInTheCaseLive: LiveFigures<'what-is-in-the-case'> = {
  'light-through-the-tube': async () => (await import('./light-figure')).LightFigure,
  'width-and-light': async () => (await import('./width-figure')).WidthFigure,
};
