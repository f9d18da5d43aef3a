import { cureWords } from '@/components/lab/fault/cure-words';
import type { FaultId } from '@/lib/faults/fault-ids';
import { faultOf } from '@/lib/faults/faults';

export type FaultRow = {
  /** What is seen at the telescope. */
  sign: string;
  /** What it may be. */
  faults: readonly FaultId[];
};

/**
 * The whole fault catalogue by what a learner sees, in the order in which an evening meets it. The signs
 * are those of the design's table "Which slip bites where".
 */
export const faultRows: readonly FaultRow[] = [
  {
    sign: 'First slew ends fists away',
    faults: ['summer-time', 'time-zone', 'date', 'longitude-sign', 'latitude'],
  },
  { sign: 'Slews all turned to one side, heights right', faults: ['compass-north'] },
  { sign: 'Slews all too high, or all too low', faults: ['tube-not-level-at-start'] },
  { sign: 'Slews high on one side of the sky, low opposite', faults: ['base-not-level'] },
  { sign: 'Dot on the star, star beside the middle of the eyepiece', faults: ['finder-off'] },
  {
    sign: 'The two disagree, the base seems on its side, or the zero is absurd',
    faults: ['wrong-star', 'planet', 'swapped-stars'],
  },
  {
    sign: 'Go-tos off by a little, arcminutes',
    faults: ['backlash', 'wrong-final-approach'],
  },
  { sign: 'Was right, now off in height', faults: ['tube-slips'] },
  { sign: 'Was right, now off; an axis turns by hand', faults: ['clutch-unlocked'] },
  { sign: 'Was right, now off; somebody touched a leg', faults: ['tripod-bumped'] },
  { sign: 'Was right, off sideways after a long turn', faults: ['cable-snag'] },
  { sign: 'All forgotten, or it starts afresh', faults: ['supply-reset'] },
];

/** What puts a row right, as the catalogue has it; each cure once. */
export function curesOf({ faults }: FaultRow): string[] {
  const cures = faults.flatMap((id) => faultOf(id).cures.slice(0, 1));
  return [...new Set(cures)].map((cure) => cureWords[cure].name);
}
