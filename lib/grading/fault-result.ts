import type { Landing } from '../faults/evidence';
import type { CureId, FaultId } from '../faults/fault-ids';
import type { FaultTemplate, Look } from '../variants/fault-variant';

export type FaultCriterion = { id: 'fault' | 'cure' | 'looks'; earned: number; possible: number };

export type FaultResult = {
  lab: 'what-went-wrong';
  graderVersion: number;
  template: FaultTemplate;
  /** 0–100, not rounded. */
  total: number;
  criteria: readonly FaultCriterion[];
  named: FaultId;
  cure: CureId;
  fault: FaultId;
  /** Every fault that this evidence could not tell apart, the fault itself too. */
  alike: readonly FaultId[];
  rightCures: readonly CureId[];
  looked: readonly Look[];
  testSlew: number | null;
  /** The evidence that would have told the named fault from the real one; null when it was right. */
  tellTale: Look | 'test-slew' | null;
  /**
   * Where the test slew, or without one the first on offer, would have landed had it been the fault
   * that was named; null where the mount would not have driven there. Not kept where the fault itself
   * was named, nor for keys that do not tell.
   */
  namedSlew?: Landing | null;
};
