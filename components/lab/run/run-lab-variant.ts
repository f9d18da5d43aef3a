import type { RunVariant } from '@/lib/variants/run-variant';
import { localTimeInWords } from '../pair/pair-lab-sky';

/**
 * All that the lab needs of one run. The set-up's hidden errors are among it: a mount that moves at
 * sixty frames a second cannot ask a server where it is.
 */
export type RunLabVariant = RunVariant & {
  placeName: string;
  /** "Saturday 5 December 2026, 19:30" at the place, when the run begins. */
  localTimeText: string;
};

/** What the lab needs of a variant, with the words that the variant does not carry. */
export const runLabVariant = (
  variant: RunVariant,
  about: { placeName: string },
): RunLabVariant => ({
  ...variant,
  placeName: about.placeName,
  localTimeText: localTimeInWords(variant.scenario.localTime),
});
