import { isFresh, type CellKind } from '../../../power/cell';
import { isReversed, otherEnd, type Bay } from '../../../power/holder';
import { nightAhead } from '../../../power/night';
import {
  benchAtStart,
  holderPlug,
  loose,
  type BenchCell,
  type PowerAction,
  type PowerBench,
} from '../../../power/power-bench';
import { faultsOfSupply } from '../../../power/supply';
import { nightOf, type PowerVariant } from '../../../variants/bench/power/power-variant';
import { emptyPowerDraft, type PowerSubmission } from './power-submission';
import { reversedIn } from './power-wiring-criteria';

/** What an operator who makes no mistake hands in. */
export function powerModelAnswer(variant: PowerVariant): PowerSubmission {
  const { setup } = variant;
  const bench = benchAtStart(setup);
  const night = nightOf(variant);
  if (night !== null) {
    const { meanA, runTimeHours, slewingV, resets, plans } = nightAhead(night);
    const [plan = 'go'] = plans;
    return {
      ...emptyPowerDraft,
      meanMilliamperes: Math.round(meanA * 1000),
      runTimeHours: Math.round(runTimeHours * 10) / 10,
      slewingVolts: Math.round(slewingV * 10) / 10,
      resets,
      plan,
    };
  }
  const fitting = setup.supplies.find((one) => faultsOfSupply(one, setup.needs).length === 0);
  const isProbed = variant.template === 'find-the-reversed';
  return {
    ...emptyPowerDraft,
    actions: [
      ...(bench.on ? [{ do: 'switch', on: false } as const] : []),
      ...(bench.plugged === null ? [] : [{ do: 'unplug' } as const]),
      ...(isProbed ? probing(bench.bays) : []),
      ...repairs(variant, bench),
      { do: 'hand-control', connected: true },
      { do: 'plug', supply: fitting?.id ?? holderPlug },
      { do: 'switch', on: true },
      { do: 'slew' },
    ],
    reversedCount: isProbed ? reversedIn(bench) : null,
    verdicts: Object.fromEntries(
      setup.supplies.map((one) => [one.id, faultsOfSupply(one, setup.needs)[0] ?? 'fits']),
    ),
  };
}

/** The total, then halves: of each stretch that hides a reversed cell one half is read, the other follows. */
function probing(bays: readonly Bay[]): PowerAction[] {
  const reading = (from: number, to: number): PowerAction => ({ do: 'read', red: to, black: from });
  const split = (from: number, to: number): PowerAction[] => {
    const reversed = bays.slice(from, to).filter(isReversed).length;
    if (reversed === 0 || reversed === to - from) return [];
    const middle = Math.ceil((from + to) / 2);
    return [reading(from, middle), ...split(from, middle), ...split(middle, to)];
  };
  return [reading(0, bays.length), ...split(0, bays.length)];
}

/** Out with what does not belong, round with what is turned, and fresh cells of one kind into the rest. */
function repairs({ setup }: PowerVariant, bench: PowerBench): PowerAction[] {
  const kind = commonKind(setup.cells);
  const belongs = (cell: BenchCell): boolean => cell.kind === kind && isFresh(cell);
  const spare = loose(setup, bench).filter(belongs);
  return bench.bays.flatMap((bay, i): PowerAction[] => {
    if (bay.put !== null && belongs(bay.put.cell))
      return isReversed(bay) ? [{ do: 'turn', bay: i }] : [];
    const next = spare.shift();
    if (next === undefined) throw new Error('a task has eight cells that belong together');
    const put = { do: 'put', cell: next.id, bay: i, plusEnd: otherEnd(bay.springEnd) } as const;
    return bay.put === null ? [put] : [{ do: 'take', bay: i }, put];
  });
}

/** The kind of which most fresh cells are there. */
function commonKind(cells: readonly BenchCell[]): CellKind | null {
  const counts = new Map<CellKind, number>();
  for (const { kind } of cells.filter(isFresh)) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  let best: { kind: CellKind; count: number } | null = null;
  for (const [kind, count] of counts) {
    if (best === null || count > best.count) best = { kind, count };
  }
  return best?.kind ?? null;
}
