import type { FigureStills } from '../figure-registry';

export const whatIsInTheCaseStills: FigureStills<'what-is-in-the-case'> = {};
