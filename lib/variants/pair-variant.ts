import type { Scenario } from '../pointing/scenario';
import type { SkyFrame } from '../sky/sky-frame';

export const pairTemplates = [
  /** Choose any two. */
  'free-pair',
  /** One star is given: choose its best partner. */
  'partner',
  /** A bank of cloud covers part of the sky. */
  'cloud-bank',
  /** The mount proposes stars one after another: keep two of them. */
  'mount-proposes',
  /** Nothing will do tonight: say so. Looks like any other variant. */
  'none-usable',
] as const;
export type PairTemplate = (typeof pairTemplates)[number];

/** One student's version of the task. Stored whole with the attempt: grading never recomputes the sky. */
export type PairVariant = {
  lab: 'pick-the-pair';
  generatorVersion: number;
  catalogueVersion: string;
  template: PairTemplate;
  /** Moved within the teacher's window; `localTime` and clouds are this variant's own. */
  scenario: Scenario;
  frame: SkyFrame;
  nakedEyeLimit: number;
  /** HIP of the star that is given, in 'partner' only. */
  givenHip: number | null;
  /** HIP numbers in the order the mount proposes them, in 'mount-proposes' only. */
  proposals: readonly number[] | null;
};
