import type { LiveFigures } from '../figure-registry';

export const powerWithoutSmokeLive: LiveFigures<'power-without-smoke'> = {
  'plate-and-label': async () => (await import('./label-figure')).LabelFigure,
  'row-of-cells': async () => (await import('./row-figure')).RowFigure,
  'cells-in-the-cold': async () => (await import('./cold-figure')).ColdFigure,
};
