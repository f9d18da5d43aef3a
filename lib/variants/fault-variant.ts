import type { RunKit } from '../alignment/setup';
import type { Evidence } from '../faults/evidence';
import type { CureId, FaultId } from '../faults/fault-ids';
import type { Scenario } from '../pointing/scenario';
import type { SkyFrame } from '../sky/sky-frame';

export const faultTemplates = [
  /** From the two first slews and what the alignment said. */
  'first-slews',
  /** The alignment was believed; what came after it is told. */
  'after-the-alignment',
  /** One star only: the first slew, and what may be looked up. */
  'one-slew',
  /** The settings card lies open, the slews are to be asked for. */
  'card-first',
  /** What a bystander noticed, then what the sky says. */
  'bystander',
] as const;
export type FaultTemplate = (typeof faultTemplates)[number];

/** What can be looked at beyond what is told; each look costs a little. */
export const looks = ['first', 'second', 'outcome', 'later', 'card', 'observations'] as const;
export type Look = (typeof looks)[number];

/** One student's "What went wrong?". Which fault it is stands in the answer key alone. */
export type FaultVariant = {
  lab: 'what-went-wrong';
  generatorVersion: number;
  catalogueVersion: string;
  template: FaultTemplate;
  scenario: Scenario;
  frame: SkyFrame;
  nakedEyeLimit: number;
  kit: RunKit;
  evidence: Evidence;
  /** What is told without asking. */
  open: readonly Look[];
  /** The stars that a test slew may be sent to, with where it lands: one may be asked for. */
  testSlews: Evidence['later'];
  /** What the learner chooses among. */
  faults: readonly FaultId[];
  cures: readonly CureId[];
};

/** Kept with the attempt and never sent before submission. */
export type FaultAnswerKey = {
  lab: 'what-went-wrong';
  fault: FaultId;
  /** Every fault that gives the same evidence on this evening, the fault itself too. */
  alike: readonly FaultId[];
  /** For each of them, what cures it. */
  cures: Readonly<Partial<Record<FaultId, readonly CureId[]>>>;
  /** For each offered fault that it is not: what would have told the two apart. */
  tellTales: Readonly<Partial<Record<FaultId, Look | 'test-slew'>>>;
  /**
   * For each of those: where its test slews would have landed, in the form that comes nearest to what
   * was seen; a star that the mount would not have driven to is left out. Keys made before this was
   * kept have none.
   */
  testSlewsIf?: Readonly<Partial<Record<FaultId, Evidence['later']>>>;
};
