import type { LiveFigures } from '../figure-registry';

export const eyepiecesAndViewsLive: LiveFigures<'eyepieces-and-views'> = {};
