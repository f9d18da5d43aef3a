import type { LiveFigures } from '../figure-registry';

export const whatIsInTheCaseLive: LiveFigures<'what-is-in-the-case'> = {};
