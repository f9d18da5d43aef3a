import type { RunKit, RunSetup } from '../alignment/setup';
import type { Scenario } from '../pointing/scenario';
import type { SkyFrame } from '../sky/sky-frame';

export const runTemplates = [
  /** Both stars are the learner's own choice. */
  'own-choice',
  /** The mount proposes stars one after another, as many mounts do. */
  'mount-proposes',
  /** The first star is given; the second is the learner's choice. */
  'first-given',
  /** The mount proposes, and its first proposals stand behind a tree, a roof or a cloud. */
  'in-the-way',
  /** A bright planet or another bright star stands where the first slew lands. */
  'decoy',
] as const;
export type RunTemplate = (typeof runTemplates)[number];

/** One student's alignment run. Stored whole: marking never recomputes the sky. */
export type RunVariant = {
  lab: 'alignment-run';
  generatorVersion: number;
  catalogueVersion: string;
  template: RunTemplate;
  scenario: Scenario;
  /** The true sky at the run's first instant; it turns from there. */
  frame: SkyFrame;
  nakedEyeLimit: number;
  kit: RunKit;
  setup: RunSetup;
  /** Given as the first star, in 'first-given' and 'decoy'. */
  givenHip: number | null;
  /** In the order the mount proposes them, where it does. */
  proposals: readonly number[] | null;
  /** Stars well off both to check the alignment on, best first; the learner takes the first. */
  thirdHips: readonly number[];
  /** Null: time does not count. Else minutes of sky time for full marks. */
  minutesAllowed: number | null;
  mayPause: boolean;
};
