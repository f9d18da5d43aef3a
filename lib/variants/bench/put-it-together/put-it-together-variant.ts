import type { HazardMoment, Sight } from '../../../assembly/hazards';
import type { AssemblyStep, AssemblyTask } from '../../../assembly/steps';
import type { BenchVariant } from '../bench-variant';

export const putItTogetherTemplates = [
  /** Everything from the closed case to the open caps. */
  'from-the-case',
  /** Somebody began, and left one thing out: it comes before anything else. */
  'half-built',
  /** The parts of three telescopes in one case: only some belong to this one. */
  'mixed-case',
  /** The Sun is up: the same, with the caps on. */
  'by-day',
  /** The evening is over: all of it back into the case. */
  'take-down',
] as const;
export type PutItTogetherTemplate = (typeof putItTogetherTemplates)[number];

/** One student's "Put it together". */
export type PutItTogetherVariant = BenchVariant<'put-it-together', PutItTogetherTemplate> &
  AssemblyTask & {
    /** What was done before the student came, in that order. */
    done: readonly AssemblyStep[];
    /** What lies on the bench to be done, in a drawn order: needed and not. */
    cards: readonly AssemblyStep[];
    /** What is to be looked at with an eye for danger. */
    moments: readonly { moment: HazardMoment; seen: readonly Sight[] }[];
  };
