import type { LiveFigures } from '../figure-registry';

export const whatWentWrongLive: LiveFigures<'what-went-wrong'> = {};
