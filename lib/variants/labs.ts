import { faultTemplates, type FaultTemplate } from './fault-variant';
import { pairTemplates, type PairTemplate } from './pair-variant';
import { runTemplates, type RunTemplate } from './run-variant';

export const labs = ['pick-the-pair', 'alignment-run', 'what-went-wrong'] as const;
export type Lab = (typeof labs)[number];

/** A kind of task, of whichever lab; the same word may stand for a kind of two labs. */
export type Template = PairTemplate | RunTemplate | FaultTemplate;

/** What a teacher can set in a lab beside sky and telescope. */
export const labOptions: Readonly<
  Record<
    Lab,
    {
      templates: readonly Template[];
      /** Whether the time that the work takes can count. */
      canBeTimed: boolean;
    }
  >
> = {
  'pick-the-pair': { templates: pairTemplates, canBeTimed: false },
  'alignment-run': { templates: runTemplates, canBeTimed: true },
  'what-went-wrong': { templates: faultTemplates, canBeTimed: false },
};
