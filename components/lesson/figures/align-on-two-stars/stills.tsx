import type { FigureStills } from '../figure-registry';

export const alignOnTwoStarsStills: FigureStills<'align-on-two-stars'> = {};
