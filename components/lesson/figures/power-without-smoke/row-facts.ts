import type { Shape } from '@/lib/drawings/drawing';
import { holderShapes } from '@/lib/drawings/draw-holder';
import { meterShapes } from '@/lib/drawings/draw-meter';
import { voltsText } from '@/lib/drawings/label-words';
import { bayEnds, otherEnd } from '@/lib/power/holder';
import { benchAtStart, holderPlug, type PowerSetup } from '@/lib/power/power-bench';
import { slewingV, terminalsOf, type ComputerState } from '@/lib/power/terminals';

/** How a cell lies in its bay. */
export const cellWays = ['right', 'turned', 'out'] as const;
export type CellWay = (typeof cellWays)[number];

export const startingRow: readonly CellWay[] = Array.from({ length: 8 }, (_, i) =>
  i === 2 ? 'turned' : 'right',
);

type RowFacts = {
  /** At the plug, without a load; null: an open circuit. */
  openV: number | null;
  computer: ComputerState;
  /** At the peak of a slew; null where nothing runs. */
  slewV: number | null;
  restarts: boolean;
  shapes: readonly Shape[];
};

/** Eight fresh alkaline cells at 20 °C, plugged in and switched on, by the engine of the power lab. */
export function rowFacts(ways: readonly CellWay[]): RowFacts {
  const springEnds = ways.map((_, i) => bayEnds[i % 2] ?? 'top');
  const setup: PowerSetup = {
    needs: {
      nominalV: 12,
      centre: 'positive',
      highestV: 14,
      resetBelowV: 7.2,
      trackingA: 0.2,
      slewingA: 1.2,
    },
    temperatureC: 20,
    springEnds,
    supplies: [],
    cells: ways.map((_, i) => ({ id: String(i), kind: 'alkaline', left: 1 })),
    start: {
      bays: ways.map((way, i) => {
        const springEnd = springEnds[i] ?? 'top';
        if (way === 'out') return null;
        return { cell: String(i), plusEnd: way === 'turned' ? springEnd : otherEnd(springEnd) };
      }),
      plugged: holderPlug,
      handControl: true,
      on: false,
    },
  };
  const off = benchAtStart(setup);
  const on = { ...off, on: true };
  const openV = terminalsOf(setup, off).volts;
  const slewV = slewingV(setup, on);
  return {
    openV,
    computer: terminalsOf(setup, on).computer,
    slewV,
    restarts: slewV !== null && slewV < setup.needs.resetBelowV,
    shapes: [
      ...holderShapes(off.bays),
      ...meterShapes(85, 158, openV === null ? '– – V' : voltsText(openV)),
    ],
  };
}

/** What the row does, in sentences. */
export function rowWords({ openV, computer, slewV, restarts }: RowFacts): string {
  if (openV === null) return 'The circuit is open: one gap in the row, and nothing flows.';
  const reads = `The meter shows ${voltsText(openV)}.`;
  switch (computer) {
    case 'reversed':
      return `${reads} Plus and minus are exchanged: switched on, the telescope may be ruined.`;
    case 'no-power':
      return `${reads} The cells cancel each other out, and the lamp stays dark.`;
    case 'too-few-volts':
      return `${reads} Too few volts: the computer does not start.`;
    default:
      return slewV !== null && restarts
        ? `${reads} The computer starts, but a slew pulls the volts down to ${voltsText(slewV)}: it restarts and forgets its alignment.`
        : `${reads} It runs, and in a slew ${voltsText(slewV ?? openV)} are left.`;
  }
}
