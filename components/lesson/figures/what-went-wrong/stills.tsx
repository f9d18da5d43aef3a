import type { FigureStills } from '../figure-registry';

export const whatWentWrongStills: FigureStills<'what-went-wrong'> = {};
