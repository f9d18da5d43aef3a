import type { LiveFigures } from '../figure-registry';

export const clockAndPlaceLive: LiveFigures<'clock-and-place'> = {
  'turning-sky': async () => (await import('./turning-sky-figure')).TurningSkyFigure,
  'wrong-clock': async () => (await import('./wrong-clock-figure')).WrongClockFigure,
  'needle-and-north': async () => (await import('./needle-figure')).NeedleFigure,
};
