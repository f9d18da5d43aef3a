import { baseNotLevel, compassNorth, tripodBumped, tubeNotLevelAtStart } from './base-and-start';
import { date, latitude, longitudeSign, summerTime, timeZone } from './clock-and-place';
import type { FaultId } from './fault-ids';
import type { Fault } from './faulty-evening';
import { supplyReset } from './power';
import { planet, swappedStars, wrongStar } from './stars';
import {
  backlash,
  cableSnag,
  clutchUnlocked,
  finderOff,
  tubeSlips,
  wrongFinalApproach,
} from './tube-and-motors';

/** Every fault there is, by where it sits. A new one is entered here and in `fault-ids.ts`. */
export const faultFamilies = {
  'clock-and-place': [summerTime, timeZone, date, longitudeSign, latitude],
  stars: [swappedStars, wrongStar, planet],
  'base-and-start': [baseNotLevel, tubeNotLevelAtStart, compassNorth, tripodBumped],
  'tube-and-motors': [
    finderOff,
    backlash,
    wrongFinalApproach,
    tubeSlips,
    clutchUnlocked,
    cableSnag,
  ],
  power: [supplyReset],
} as const satisfies Record<string, readonly Fault[]>;
export type FaultFamily = keyof typeof faultFamilies;

export const faults: readonly Fault[] = Object.values(faultFamilies).flat();

const byId = new Map<FaultId, Fault>(faults.map((fault) => [fault.id, fault]));

/** @throws {Error} for a fault that was named and never made. */
export function faultOf(id: FaultId): Fault {
  const fault = byId.get(id);
  if (fault === undefined) throw new Error(`there is no fault ${id}`);
  return fault;
}
