import type { FigureStills } from '../figure-registry';

export const theNightStills: FigureStills<'the-night'> = {};
