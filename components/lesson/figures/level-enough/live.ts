import type { LiveFigures } from '../figure-registry';

export const levelEnoughLive: LiveFigures<'level-enough'> = {};
