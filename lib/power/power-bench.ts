import type { Cell } from './cell';
import type { Bay, BayEnd } from './holder';
import type { Supply, TelescopeNeeds } from './supply';

/** A cell with the letter on its tag. */
export type BenchCell = Cell & { id: string };

/** What lies on the bench at the start. Plain numbers and letters: an attempt stores it. */
export type PowerSetup = {
  needs: TelescopeNeeds;
  temperatureC: number;
  /** One for each bay; empty where no holder is on the bench. */
  springEnds: readonly BayEnd[];
  cells: readonly BenchCell[];
  supplies: readonly Supply[];
  start: {
    bays: readonly ({ cell: string; plusEnd: BayEnd } | null)[];
    /** `holderPlug` or the letter of a supply: whose plug sits in the telescope's socket. */
    plugged: string | null;
    handControl: boolean;
    on: boolean;
  };
};

/** The holder's own plug; supplies have letters. */
export const holderPlug = 'holder';

export type PowerAction =
  | { do: 'put'; cell: string; bay: number; plusEnd: BayEnd }
  | { do: 'take'; bay: number }
  | { do: 'turn'; bay: number }
  | { do: 'plug'; supply: string }
  | { do: 'unplug' }
  | { do: 'hand-control'; connected: boolean }
  | { do: 'switch'; on: boolean }
  /** One press of the hand control, at full speed in both directions. */
  | { do: 'slew' }
  /** The meter's two probes on two studs of the holder. */
  | { do: 'read'; red: number; black: number };

/** The bench after some actions. Bays are numbered from 0. */
export type PowerBench = {
  bays: readonly Bay<BenchCell>[];
  plugged: string | null;
  handControl: boolean;
  on: boolean;
  /** Whether the supply went in after the hand control, and the switch on after both; null: not yet. */
  supplyWentInAfter: boolean | null;
  switchedOnLast: boolean | null;
  /** Null where a bay between the probes is empty. */
  readings: readonly { red: number; black: number; volts: number | null }[];
};

export function benchAtStart({ springEnds, cells, start }: PowerSetup): PowerBench {
  return {
    bays: springEnds.map((springEnd, i) => {
      const put = start.bays[i] ?? null;
      const cell = put && cells.find(({ id }) => id === put.cell);
      return { springEnd, put: put && cell ? { cell, plusEnd: put.plusEnd } : null };
    }),
    plugged: start.plugged,
    handControl: start.handControl,
    on: start.on,
    // Nobody saw how it was left: what stands connected counts once it was connected by the learner.
    supplyWentInAfter: null,
    switchedOnLast: null,
    readings: [],
  };
}

/** Cells that lie on the bench, in the order of their tags. */
export const loose = ({ cells }: PowerSetup, { bays }: PowerBench): readonly BenchCell[] =>
  cells.filter(({ id }) => bays.every(({ put }) => put?.cell.id !== id));
