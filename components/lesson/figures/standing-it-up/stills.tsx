import type { FigureStills } from '../figure-registry';

export const standingItUpStills: FigureStills<'standing-it-up'> = {};
