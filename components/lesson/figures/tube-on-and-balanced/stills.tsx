import type { FigureStills } from '../figure-registry';

export const tubeOnAndBalancedStills: FigureStills<'tube-on-and-balanced'> = {};
