import type { LiveFigures } from '../figure-registry';

export const powerWithoutSmokeLive: LiveFigures<'power-without-smoke'> = {};
