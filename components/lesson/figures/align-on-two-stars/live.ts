import type { LiveFigures } from '../figure-registry';

export const alignOnTwoStarsLive: LiveFigures<'align-on-two-stars'> = {};
