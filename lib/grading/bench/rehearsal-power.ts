import { replay } from '../../power/act';
import { meanCurrentA, runTimeHours } from '../../power/capacity';
import { seriesSource } from '../../power/holder';
import {
  benchAtStart,
  holderPlug,
  type PowerBench,
  type PowerSetup,
} from '../../power/power-bench';
import { suppliedV } from '../../power/supply';
import { terminalsOf } from '../../power/terminals';
import type { HandedOn } from '../../rehearsal/handed-on';
import { howLongItLasts, type EveningSupply, type Slew } from '../../rehearsal/how-long';
import { isWired, type PowerVariant } from '../../variants/bench/power-variant';
import type { PowerDraft } from './power-submission';

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
  const share = night?.slewingShare ?? usualSlewingShare;
  if (!isWired(variant)) {
    if (draft.plan === null) return null;
    // Another supply is one that fits; spare cells of the same kind last longer and sag alike.
    if (draft.plan === 'other-supply') return { resetsAtSlew: null, hours: null };
    const lasting = lastingOf(setup, benchAtStart(setup), share);
    const hours = lasting?.hours ?? null;
    const sets = draft.plan === 'spare-set' ? 2 : 1;
    return lasting && { ...lasting, hours: hours === null ? null : hours * sets };
  }
  const played = replay(setup, benchAtStart(setup), draft.actions);
  if (played === null || terminalsOf(setup, played.bench).computer !== 'running') return null;
  return lastingOf(setup, played.bench, share);
}

function lastingOf(setup: PowerSetup, bench: PowerBench, slewingShare: number): HandedOn['power'] {
  const supply = supplyOf(setup, bench, slewingShare);
  if (supply === null) return null;
  const { hours, resetsAtSlew } = howLongItLasts(supply, setup.needs, slews);
  return { resetsAtSlew, hours: Number.isFinite(hours) ? hours : null };
}

function supplyOf(
  { needs, temperatureC, supplies }: PowerSetup,
  { bays, plugged }: PowerBench,
  slewingShare: number,
): EveningSupply | null {
  const { trackingA, slewingA } = needs;
  if (plugged === holderPlug) {
    const atFirst = seriesSource(bays, temperatureC);
    const empty = bays.map((bay) => ({
      ...bay,
      put: bay.put && { ...bay.put, cell: { ...bay.put.cell, left: 0 } },
    }));
    const atLast = seriesSource(empty, temperatureC);
    if (atFirst === null || atLast === null) return null;
    const mean = meanCurrentA({ trackingA, slewingA, slewingShare });
    const cells = bays.flatMap(({ put }) => (put === null ? [] : [put.cell]));
    const usableAh = mean * runTimeHours({ cells, meanCurrentA: mean, temperatureC });
    return { atFirst, atLast, usableAh };
  }
  const supply = supplies.find(({ id }) => id === plugged);
  if (supply === undefined) return null;
  // Its label promises volts and amperes, and says nothing of how long.
  const openV = supply.volts;
  const pack = { openV, resistanceOhm: (openV - suppliedV(supply, slewingA)) / slewingA };
  return { atFirst: pack, atLast: pack, usableAh: Infinity };
}
