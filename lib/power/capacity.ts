import type { Cell, CellKind } from './cell';

/**
 * How long one cell feeds one steady current at 20 °C, and the exponent of its fall with the current
 * (Peukert's law: hours ∝ current^−k).
 *
 * Alkaline: IEC 60086-2, LR6, minimum average durations to 0.9 V at 1 h a day: 250 mA 5 h, 100 mA 15 h
 * (from memory); k is what joins the two, ln 3 / ln 2.5. The other three are typical of AA cells, from
 * memory, no source: zinc-carbon about a third of it, lithium 3 Ah nearly whatever the current, and
 * nickel-metal hydride 2 Ah at its five-hour rate.
 */
const endurance: Readonly<Record<CellKind, { hours: number; atA: number; exponent: number }>> = {
  alkaline: { hours: 5, atA: 0.25, exponent: Math.log(3) / Math.log(2.5) },
  'zinc-carbon': { hours: 1.4, atA: 0.25, exponent: 1.35 },
  lithium: { hours: 12, atA: 0.25, exponent: 1.05 },
  'nickel-metal-hydride': { hours: 5, atA: 0.4, exponent: 1.05 },
};

/** Below the lowest of the tests nothing is gained: other losses set in (our limit, no source). */
const lowestA = 0.05;

/** Ampere-hours that one fresh cell gives at a steady current, at 20 °C. */
export function usableCapacityAh(kind: CellKind, currentA: number): number {
  const { hours, atA, exponent } = endurance[kind];
  const drawn = Math.max(lowestA, currentA);
  return atA * hours * (drawn / atA) ** (1 - exponent);
}

/** [°C, share of the capacity at 20 °C], joined by straight lines. From memory, no source. */
const cold: Readonly<Record<CellKind, readonly (readonly [number, number])[]>> = {
  alkaline: [
    [-20, 0.2],
    [-10, 0.4],
    [0, 0.6],
    [10, 0.85],
    [20, 1],
  ],
  'zinc-carbon': [
    [-20, 0.05],
    [-10, 0.2],
    [0, 0.45],
    [10, 0.75],
    [20, 1],
  ],
  lithium: [
    [-20, 0.8],
    [0, 0.95],
    [20, 1],
  ],
  'nickel-metal-hydride': [
    [-20, 0.5],
    [-10, 0.7],
    [0, 0.85],
    [10, 0.95],
    [20, 1],
  ],
};

/** What the cold leaves of a cell's capacity, 0–1; above 20 °C all of it, below −20 °C as at −20 °C. */
export function coldShare(kind: CellKind, temperatureC: number): number {
  const points = cold[kind];
  let below = points[0];
  for (const point of points) {
    if (below === undefined || point[0] <= temperatureC) below = point;
    else {
      const part = Math.max(0, (temperatureC - below[0]) / (point[0] - below[0]));
      return below[1] + part * (point[1] - below[1]);
    }
  }
  return below?.[1] ?? 1;
}

/**
 * Hours that cells in series last. One current runs through all of them, so their capacities do not
 * add: the poorest decides. 0 where there is none.
 */
export function runTimeHours({
  cells,
  meanCurrentA,
  temperatureC,
}: {
  cells: readonly Cell[];
  meanCurrentA: number;
  temperatureC: number;
}): number {
  if (cells.length === 0) return 0;
  return Math.min(
    ...cells.map(
      ({ kind, left }) =>
        (left * usableCapacityAh(kind, meanCurrentA) * coldShare(kind, temperatureC)) /
        meanCurrentA,
    ),
  );
}

/** The mean of a current that flows for a share of the time and another for the rest, amperes. */
export const meanCurrentA = ({
  trackingA,
  slewingA,
  slewingShare,
}: {
  trackingA: number;
  slewingA: number;
  /** 0–1 */
  slewingShare: number;
}): number => slewingShare * slewingA + (1 - slewingShare) * trackingA;
