import type { LiveFigures } from '../figure-registry';

export const tubeOnAndBalancedLive: LiveFigures<'tube-on-and-balanced'> = {};
