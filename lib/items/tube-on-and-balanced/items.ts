import type { ItemFamily } from '../item-family';
import { balancePoint } from './balance-point';
import { creepAndClutch } from './creep-and-clutch';
import { intoTheClamp } from './into-the-clamp';
import { partsGoOn } from './parts-go-on';
import { raisedTube } from './raised-tube';
import { whichEndSinks } from './which-end-sinks';

/** The families of the lesson "tube-on-and-balanced", in the order of its objectives. */
export const tubeOnAndBalancedItems: readonly ItemFamily[] = [
  intoTheClamp,
  whichEndSinks,
  balancePoint,
  partsGoOn,
  raisedTube,
  creepAndClutch,
];
