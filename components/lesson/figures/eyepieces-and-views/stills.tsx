import type { FigureStills } from '../figure-registry';

export const eyepiecesAndViewsStills: FigureStills<'eyepieces-and-views'> = {};
