import type { TubeType } from '../../../optics/image-orientation';
import type { PowerSetup } from '../../../power/power-bench';
import type { PowerNight } from '../../../power/night';
import type { BenchVariant } from '../bench-variant';

export const powerTemplates = [
  'fill-the-holder',
  'choose-the-supply',
  'find-the-reversed',
  'last-the-night',
  'switch-on',
] as const;
export type PowerTemplate = (typeof powerTemplates)[number];

/** One student's "Power". */
export type PowerVariant = BenchVariant<'power', PowerTemplate> & {
  tubeType: TubeType;
  setup: PowerSetup;
  /** What is to be foretold; of "last-the-night" alone. */
  night: Pick<PowerNight, 'kind' | 'hours' | 'slewingShare'> | null;
};

/** Lets nobody look at the ends of the cells: the meter has to tell. */
export const isHolderClosed = ({ template }: Pick<PowerVariant, 'template'>): boolean =>
  template === 'find-the-reversed';

/** Whether the telescope is to be wired up and switched on. */
export const isWired = ({ template }: Pick<PowerVariant, 'template'>): boolean =>
  template !== 'last-the-night';

/** The whole of what is to be foretold; null where nothing is. */
export const nightOf = ({ setup, night }: PowerVariant): PowerNight | null =>
  night && { ...night, needs: setup.needs, temperatureC: setup.temperatureC };
