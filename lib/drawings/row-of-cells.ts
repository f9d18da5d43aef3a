import type { CellKind } from '../power/cell';
import { bayEnds, otherEnd, type Bay } from '../power/holder';
import type { Random } from '../variants/random';
import { pickOne } from '../variants/pick-one';

/** Fresh cells of one kind in a row; the bays in `turned` hold theirs the wrong way round. */
export function rowOfCells(
  random: Random,
  { kind, count, turned = [], empty = null }: RowOfCells,
): Bay[] {
  return Array.from({ length: count }, (_, i) => {
    const springEnd = pickOne(random, bayEnds);
    const plusEnd = turned.includes(i) ? springEnd : otherEnd(springEnd);
    return { springEnd, put: i === empty ? null : { cell: { kind, left: 1 }, plusEnd } };
  });
}

type RowOfCells = {
  kind: CellKind;
  count: number;
  turned?: readonly number[];
  empty?: number | null;
};

/** The first so many numbers from 0, in chance order. */
export const someBays = (random: Random, count: number, of: number): number[] =>
  random.shuffle(Array.from({ length: of }, (_, i) => i)).slice(0, count);

/** Kinds that a class would put into a holder. */
export const rowKinds = ['alkaline', 'nickel-metal-hydride'] as const;

export const kindNames: Readonly<Record<CellKind, string>> = {
  alkaline: 'alkaline',
  'zinc-carbon': 'zinc-carbon',
  lithium: 'lithium',
  'nickel-metal-hydride': 'rechargeable NiMH',
};

const counted = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];
export const inWords = (count: number): string => counted[count] ?? String(count);
