import { cellKinds, type CellKind } from '../../power/cell';
import { bayEnds, otherEnd, seriesSource, type Bay } from '../../power/holder';
import { nightAhead, type NightAhead } from '../../power/night';
import type { Quantity } from '../reckoning';

/** Fresh alkaline cells in a row, the first so many of them turned round. */
const row = (count: number, turned: number): Bay[] =>
  Array.from({ length: count }, (_, i) => {
    const springEnd = bayEnds[i % 2] ?? 'top';
    return {
      springEnd,
      put: {
        cell: { kind: 'alkaline', left: 1 },
        plusEnd: i < turned ? springEnd : otherEnd(springEnd),
      },
    };
  });

/** @throws {RangeError} for a kind of cell that is none. */
function kindOf(word: string | undefined): CellKind {
  const found = cellKinds.find((kind) => kind === word);
  if (found === undefined) throw new RangeError(`"${String(word)}" is no kind of cell`);
  return found;
}

/** Eight fresh cells that feed 0.2 A while tracking and 1.2 A in a slew. */
const eight = (kind: CellKind, temperatureC: number, slewingMinutes: number): NightAhead =>
  nightAhead({
    needs: {
      nominalV: 12,
      centre: 'positive',
      highestV: 14,
      resetBelowV: 7.2,
      trackingA: 0.2,
      slewingA: 1.2,
    },
    kind,
    temperatureC,
    hours: 3,
    slewingShare: slewingMinutes / 60,
  });

/** What the lesson "power-without-smoke" asks of the engine beyond what all lessons may. */
export const powerWithoutSmokeQuantities: Readonly<Record<string, Quantity>> = {
  /** Volts at the plug of fresh alkaline cells in a row, some turned round. */
  'row-volts': {
    takes: 'cells turned',
    digits: 1,
    value: ([count = '', turned = ''], { figure }) =>
      seriesSource(row(figure(count), figure(turned)), 20)?.openV ?? Number.NaN,
  },
  /** Amperes on the mean, with so many minutes of slewing in each hour. */
  'mean-amperes': {
    takes: 'slewing-minutes',
    digits: 1,
    value: ([minutes = ''], { figure }) => eight('alkaline', 20, figure(minutes)).meanA,
  },
  /** Hours. */
  'cells-last': {
    takes: 'kind temperature slewing-minutes',
    digits: 1,
    value: ([kind, temperature = '', minutes = ''], { figure }) =>
      eight(kindOf(kind), figure(temperature), figure(minutes)).runTimeHours,
  },
  /** Ampere-hours that one cell gives at that mean current when warm. */
  'cell-holds': {
    takes: 'kind slewing-minutes',
    digits: 2,
    value: ([kind, minutes = ''], { figure }) =>
      eight(kindOf(kind), 20, figure(minutes)).capacityAh,
  },
  /** Per cent of a cell's charge that the cold leaves. */
  'cold-leaves': {
    takes: 'kind temperature',
    digits: 0,
    value: ([kind, temperature = ''], { figure }) =>
      100 * eight(kindOf(kind), figure(temperature), 6).coldShare,
  },
  /** Volts left at the plug in a slew of 1.2 A. */
  'slew-volts': {
    takes: 'kind temperature',
    digits: 1,
    value: ([kind, temperature = ''], { figure }) =>
      eight(kindOf(kind), figure(temperature), 6).slewingV,
  },
  /** Ohms inside all eight together. */
  'row-ohms': {
    takes: 'kind temperature',
    digits: 1,
    value: ([kind, temperature = ''], { figure }) =>
      eight(kindOf(kind), figure(temperature), 6).resistanceOhm,
  },
};
