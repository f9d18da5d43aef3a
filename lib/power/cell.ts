/** Kinds of AA cell. All but nickel-metal hydride are primary: they must never be charged. */
export const cellKinds = ['alkaline', 'zinc-carbon', 'lithium', 'nickel-metal-hydride'] as const;
export type CellKind = (typeof cellKinds)[number];

/** One cell; `left` is the share of its charge it still has, 1 fresh, 0 empty. */
export type Cell = { kind: CellKind; left: number };

/**
 * Volts without a load, fresh and empty, and ohms when fresh at 20 °C (its contacts included). Fresh:
 * the nominal voltage, so that eight alkaline cells make 12 V (common practice). The rest is typical
 * of AA cells, from memory, no source.
 */
const kinds: Readonly<
  Record<CellKind, { freshV: number; emptyV: number; freshOhm: number; coldDoubling: number }>
> = {
  alkaline: { freshV: 1.5, emptyV: 1.1, freshOhm: 0.2, coldDoubling: 1 },
  'zinc-carbon': { freshV: 1.5, emptyV: 1.0, freshOhm: 0.5, coldDoubling: 1.5 },
  lithium: { freshV: 1.5, emptyV: 1.3, freshOhm: 0.15, coldDoubling: 0.5 },
  'nickel-metal-hydride': { freshV: 1.2, emptyV: 1.1, freshOhm: 0.05, coldDoubling: 0.5 },
};

/** Volts without a load: a straight line from fresh to empty (our approximation, no source). */
export function cellVoltage({ kind, left }: Cell): number {
  const { freshV, emptyV } = kinds[kind];
  return emptyV + (freshV - emptyV) * left;
}

/**
 * Ohms inside a cell. They double for every 20 °C below 20 °C in an alkaline cell, in the others
 * faster or slower, and grow to three times as the cell empties (our approximation, no source).
 */
export function cellResistanceOhm({ kind, left }: Cell, temperatureC: number): number {
  const { freshOhm, coldDoubling } = kinds[kind];
  const steps = Math.max(0, 20 - temperatureC) / 20;
  return freshOhm * 2 ** (coldDoubling * steps) * (1 + 2 * (1 - left));
}

/** Below this a cell counts as used: it does not belong in with fresh ones. */
const freshFromLeft = 0.85;
export const isFresh = ({ left }: Cell): boolean => left >= freshFromLeft;
