import type { LiveFigures } from '../figure-registry';

export const theNightLive: LiveFigures<'the-night'> = {};
