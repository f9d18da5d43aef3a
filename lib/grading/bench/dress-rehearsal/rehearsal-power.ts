import { replay } from '../../../power/act';
import { meanCurrentA, runTimeHours } from '../../../power/capacity';
import { seriesSource } from '../../../power/holder';
import {
  benchAtStart,
  holderPlug,
  type PowerBench,
  type PowerSetup,
} from '../../../power/power-bench';
import { suppliedV } from '../../../power/supply';
import { terminalsOf } from '../../../power/terminals';
import type { HandedOn } from '../../../rehearsal/handed-on';
import { howLongItLasts, type EveningSupply, type Slew } from '../../../rehearsal/how-long';
import { isWired, type PowerVariant } from '../../../variants/bench/power/power-variant';
import type { PowerDraft } from '../power/power-submission';

/** Of an evening at a telescope, where nothing else is said. Common practice, no source. */
const usualSlewingShare = 0.05;
/** The two stars and the third, and then every ten minutes for two hours; minutes from the switching on. */
const slews: readonly Slew[] = [
  ...[10, 14, 18],
  ...Array.from({ length: 12 }, (_, i) => 30 + 10 * i),
].map((atMinutes) => ({ atMinutes, minutes: 0.5 }));

/** What the power stage hands on: null while the computer stays dark or nothing has been decided. */
export function powerHandedOn(variant: PowerVariant, draft: PowerDraft): HandedOn['power'] {
  const { setup, night } = variant;
  const slewingShare = night?.slewingShare ?? usualSlewingShare;
  if (!isWired(variant)) {
    if (draft.plan === null) return null;
    // Another supply is one that fits; spare cells of the same kind last longer and sag alike.
    if (draft.plan === 'other-supply') return { resetsAtSlew: null, hours: null };
    const sets = draft.plan === 'spare-set' ? 2 : 1;
    return lastingOf(setup, benchAtStart(setup), { slewingShare, sets });
  }
  const played = replay(setup, benchAtStart(setup), draft.actions);
  if (played === null || terminalsOf(setup, played.bench).computer !== 'running') return null;
  return lastingOf(setup, played.bench, { slewingShare, sets: 1 });
}

function lastingOf(
  setup: PowerSetup,
  bench: PowerBench,
  cells: { slewingShare: number; sets: number },
): HandedOn['power'] {
  const supply = supplyOf(setup, bench, cells);
  if (supply === null) return null;
  const { hours, resetsAtSlew } = howLongItLasts(supply, setup.needs, slews);
  return { resetsAtSlew, hours: Number.isFinite(hours) ? hours : null };
}

function supplyOf(
  { needs, temperatureC, supplies }: PowerSetup,
  { bays, plugged }: PowerBench,
  { slewingShare, sets }: { slewingShare: number; sets: number },
): EveningSupply | null {
  const { trackingA, slewingA } = needs;
  if (plugged === holderPlug) {
    const cellsInSeries = seriesSource(bays, temperatureC);
    if (cellsInSeries === null) return null;
    const mean = meanCurrentA({ trackingA, slewingA, slewingShare });
    const cells = bays.flatMap(({ put }) => (put === null ? [] : [put.cell]));
    const hours = sets * runTimeHours({ cells, meanCurrentA: mean, temperatureC });
    return { ...cellsInSeries, usableAh: mean * hours };
  }
  const supply = supplies.find(({ id }) => id === plugged);
  if (supply === undefined) return null;
  // Its label promises volts and amperes, and says nothing of how long.
  const { volts } = supply;
  const resistanceOhm = (volts - suppliedV(supply, slewingA)) / slewingA;
  return { openV: volts, resistanceOhm, usableAh: Infinity };
}
