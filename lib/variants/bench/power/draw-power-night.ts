import { cellKinds, type CellKind } from '../../../power/cell';
import { bayCount, bayEnds, otherEnd } from '../../../power/holder';
import { nightAhead, type PowerNight } from '../../../power/night';
import { holderPlug } from '../../../power/power-bench';
import type { Random } from '../../random';
import type { PowerVariant } from './power-variant';

/** What the evening should teach. */
const outcomes = ['lasts', 'too-short', 'resets'] as const;

/** What is compared keeps clear of its limit: hours by a fifth, volts by this. */
const clearOfResetV = 0.5;
const clearShare = 0.2;

/** Kinds a class would bring; a zinc-carbon cell serves no telescope for an evening. */
const kinds = cellKinds.filter((kind) => kind !== 'zinc-carbon');

const means = [0.2, 0.25, 0.3, 0.35, 0.4];
const shares = [0.05, 0.1, 0.15, 0.2];
const tries = 400;

/**
 * An evening to be foretold: what the card says is round, the mean current stands in the table of
 * capacities, and neither the hours nor the volts are a close call.
 */
export function drawNight(random: Random): Pick<PowerVariant, 'setup' | 'night'> {
  const wanted = random.pick(outcomes);
  let last: PowerNight | null = null;
  for (let attempt = 0; attempt < tries; attempt++) {
    const night = drawn(random);
    if (night === null) continue;
    const { runTimeHours, slewingV, resets } = nightAhead(night);
    const clear =
      Math.abs(slewingV - night.needs.resetBelowV) >= clearOfResetV &&
      Math.abs(runTimeHours / night.hours - 1) >= clearShare;
    if (!clear) continue;
    last = night;
    const outcome = resets ? 'resets' : runTimeHours < night.hours ? 'too-short' : 'lasts';
    if (outcome === wanted) break;
  }
  if (last === null) throw new Error('no clear evening was drawn');
  return made(last);
}

function drawn(random: Random): PowerNight | null {
  const kind = random.pick<CellKind>(kinds) ?? 'alkaline';
  const meanA = random.pick(means) ?? 0.25;
  const slewingShare = random.pick(shares) ?? 0.1;
  const slewingA = random.integer(10, 16) / 10;
  const trackingA =
    Math.round(((meanA - slewingShare * slewingA) / (1 - slewingShare)) * 1000) / 1000;
  if (trackingA < 0.08 || trackingA > 0.35) return null;
  return {
    kind,
    slewingShare,
    needs: {
      nominalV: 12,
      centre: 'positive',
      highestV: 14,
      resetBelowV: 7.2,
      trackingA,
      slewingA,
    },
    // Cold enough that to forget the cold is seen.
    temperatureC: random.integer(-10, 6),
    hours: random.integer(4, 12) / 2,
  };
}

function made({
  needs,
  temperatureC,
  ...night
}: PowerNight): Pick<PowerVariant, 'setup' | 'night'> {
  const springEnds = Array.from({ length: bayCount }, (_, i) => bayEnds[i % 2] ?? 'top');
  const cells = Array.from('ABCDEFGH', (id) => ({ id, kind: night.kind, left: 1 }));
  const bays = cells.map(({ id }, i) => ({ cell: id, plusEnd: otherEnd(springEnds[i] ?? 'top') }));
  return {
    setup: {
      needs,
      temperatureC,
      springEnds,
      cells,
      supplies: [],
      start: { bays, plugged: holderPlug, handControl: true, on: false },
    },
    night,
  };
}
