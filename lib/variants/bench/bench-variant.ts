import type { Scenario } from '../../pointing/scenario';
import type { BenchKit } from './bench-kit';

/** What every bench task keeps; the rest is its lab's own, in numbers that a regrade can replay. */
export type BenchVariant<L extends string, T extends string> = {
  lab: L;
  template: T;
  generatorVersion: number;
  kitName: string;
};

/** What one student's bench task is made of. The same input makes the same task. */
export type BenchTaskInput<T extends string> = {
  /** Hex of an HMAC, or any text. */
  seed: string;
  scenario: Scenario;
  templates: readonly T[];
  /** The task's moment lies within ± this many minutes of the scenario's. */
  windowMinutes: number;
  kit: BenchKit;
};
