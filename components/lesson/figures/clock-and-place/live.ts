import type { LiveFigures } from '../figure-registry';

export const clockAndPlaceLive: LiveFigures<'clock-and-place'> = {};
