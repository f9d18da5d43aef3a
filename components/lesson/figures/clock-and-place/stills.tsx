import type { FigureStills } from '../figure-registry';

export const clockAndPlaceStills: FigureStills<'clock-and-place'> = {};
