import { cellResistanceOhm, cellVoltage, type Cell } from './cell';

/** How many cells the holder takes. */
export const bayCount = 8;

/** Which end of a bay: the holder lies with its bays upright before the learner. */
export const bayEnds = ['top', 'bottom'] as const;
export type BayEnd = (typeof bayEnds)[number];
export const otherEnd = (end: BayEnd): BayEnd => (end === 'top' ? 'bottom' : 'top');

/** A bay has its spring at one end, for the minus end of a cell. */
export type Bay<C extends Cell = Cell> = {
  springEnd: BayEnd;
  put: { cell: C; plusEnd: BayEnd } | null;
};

/** A source of voltage as a load sees it: what it has without a load, and what it loses to one. */
export type Source = { openV: number; resistanceOhm: number };

export const isReversed = ({ springEnd, put }: Bay): boolean => put?.plusEnd === springEnd;

/**
 * Cells in series: voltages add with their signs, resistances without (Kirchhoff's second law; any
 * first-year text). With k of n like cells the wrong way round that is (n − 2k) times one. Null while
 * a bay is empty: the circuit is open.
 */
export function seriesSource(bays: readonly Bay[], temperatureC: number): Source | null {
  let openV = 0;
  let resistanceOhm = 0;
  for (const bay of bays) {
    if (bay.put === null) return null;
    const { cell } = bay.put;
    openV += cellVoltage(cell) * (isReversed(bay) ? -1 : 1);
    resistanceOhm += cellResistanceOhm(cell, temperatureC);
  }
  return { openV, resistanceOhm };
}

/**
 * Volts that a meter without a load shows between two studs of the holder, red against black. Stud 0
 * is the minus lead, stud b lies after the b-th bay. Null where a bay between is empty.
 */
export function voltsBetween(
  bays: readonly Bay[],
  redStud: number,
  blackStud: number,
): number | null {
  const [low, high] = [Math.min(redStud, blackStud), Math.max(redStud, blackStud)];
  const between = seriesSource(bays.slice(low, high), 20);
  if (between === null) return null;
  return redStud < blackStud ? -between.openV : between.openV;
}

/** Volts at the terminals while a current flows: V = n·V_cell − I·n·R (Ohm's law). */
export const underLoadV = ({ openV, resistanceOhm }: Source, currentA: number): number =>
  openV - currentA * resistanceOhm;
