import type { LiveFigures } from '../figure-registry';

export const standingItUpLive: LiveFigures<'standing-it-up'> = {};
