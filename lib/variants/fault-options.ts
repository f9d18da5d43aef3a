import type { CureId, FaultId } from '../faults/fault-ids';
import { cureIds } from '../faults/fault-ids';
import { faultOf } from '../faults/faults';
import type { Comparison } from '../faults/look-alikes';
import type { Random } from './random';

/** Few enough to weigh one by one, too many to guess among. */
const fewest = 5;
const most = 7;
/** At least so many of the offered faults are none of those that it could be. */
const leastWrong = 2;
/** With more look-alikes than this the evening tells too little to ask about it. */
export const mostAlike = most - leastWrong;

/** What is offered to choose among, in an order that tells nothing. */
export type FaultOptions = { faults: FaultId[]; cures: CureId[] };

/**
 * Every fault that it could be, with what cures each, and plausible others: half of them those whose
 * likeliest form differs least from what was seen, the rest at random among those that can happen.
 */
export function drawOptions(random: Random, compared: readonly Comparison[]): FaultOptions {
  const alike = compared.filter((one) => one.alike).map(({ fault }) => fault);
  const count = Math.max(random.integer(fewest, most), alike.length + leastWrong);
  const wanted = count - alike.length;
  const possible = random
    .shuffle(compared.filter((one) => !one.alike && one.differsBy < Infinity))
    .map(({ fault, differsBy }) => ({ fault, differsBy }));
  const near = [...possible]
    .sort((a, b) => a.differsBy - b.differsBy)
    .slice(0, Math.ceil(wanted / 2));
  const others = possible.filter((one) => !near.includes(one)).slice(0, wanted - near.length);
  const faults = random.shuffle([...alike, ...[...near, ...others].map(({ fault }) => fault)]);

  const right = new Set(alike.flatMap((fault) => faultOf(fault).cures));
  // Whoever names a fault finds its cure: a missing one would tell that the fault is not it.
  const offered = new Set(faults.flatMap((fault) => faultOf(fault).cures));
  const drawn = random.integer(fewest, most);
  const cureCount = Math.max(drawn, offered.size, right.size + leastWrong);
  const cures = new Set<CureId>(right);
  const further = [
    ...random.shuffle(faults).flatMap((fault) => faultOf(fault).cures),
    ...random.shuffle(cureIds),
  ];
  for (const cure of further) if (cures.size < cureCount) cures.add(cure);
  return { faults, cures: random.shuffle([...cures]) };
}
