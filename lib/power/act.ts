import { otherEnd, voltsBetween } from './holder';
import {
  holderPlug,
  loose,
  type PowerAction,
  type PowerBench,
  type PowerSetup,
} from './power-bench';
import { isPowerOn, slewingV, terminalsOf, type ComputerState } from './terminals';

/** What an action did beyond what was meant, with the volts it did it at. */
export type Happening =
  | { code: 'hand-control-live' }
  | { code: 'hand-control-pulled-live' }
  | { code: 'hand-control-with-switch-on' }
  | { code: 'supply-with-switch-on' }
  | { code: 'cells-moved-while-plugged' }
  | { code: 'mains-outdoors'; supply: string }
  | { code: 'reverse-polarity'; volts: number }
  | { code: 'over-voltage'; volts: number }
  | { code: 'reset'; volts: number };

export type Acted = { bench: PowerBench; happened: readonly Happening[] };

/**
 * The bench after one action, and what happened. Null for what cannot be done with what is there, such
 * as putting a cell into a full bay.
 */
export function act(setup: PowerSetup, before: PowerBench, action: PowerAction): Acted | null {
  const bench = after(setup, before, action);
  return bench && { bench, happened: happenings(setup, before, bench, action) };
}

function after(setup: PowerSetup, bench: PowerBench, action: PowerAction): PowerBench | null {
  switch (action.do) {
    case 'put': {
      const cell = loose(setup, bench).find(({ id }) => id === action.cell);
      const free = bench.bays[action.bay]?.put === null;
      return cell !== undefined && free
        ? withBay(bench, action.bay, { cell, plusEnd: action.plusEnd })
        : null;
    }
    case 'take':
      return bench.bays[action.bay]?.put ? withBay(bench, action.bay, null) : null;
    case 'turn': {
      const put = bench.bays[action.bay]?.put;
      return put ? withBay(bench, action.bay, { ...put, plusEnd: otherEnd(put.plusEnd) }) : null;
    }
    case 'plug':
      return bench.plugged === null && isOnBench(setup, action.supply)
        ? {
            ...bench,
            plugged: action.supply,
            supplyWentInAfter: bench.handControl,
            switchedOnLast: bench.on ? false : bench.switchedOnLast,
          }
        : null;
    case 'unplug':
      return bench.plugged === null ? null : { ...bench, plugged: null, supplyWentInAfter: null };
    case 'hand-control':
      return bench.handControl === action.connected
        ? null
        : {
            ...bench,
            handControl: action.connected,
            supplyWentInAfter: bench.plugged === null ? null : false,
            switchedOnLast: bench.on ? false : bench.switchedOnLast,
          };
    case 'switch':
      return bench.on === action.on
        ? null
        : {
            ...bench,
            on: action.on,
            switchedOnLast: action.on ? bench.handControl && bench.plugged !== null : null,
          };
    case 'slew':
      return bench.handControl && slewingV(setup, bench) !== null ? bench : null;
    case 'read': {
      const { red, black } = action;
      const studs = bench.bays.length + 1;
      return red === black || Math.max(red, black) >= studs
        ? null
        : {
            ...bench,
            readings: [
              ...bench.readings,
              { red, black, volts: voltsBetween(bench.bays, red, black) },
            ],
          };
    }
  }
}

const isOnBench = ({ springEnds, supplies }: PowerSetup, plug: string): boolean =>
  plug === holderPlug ? springEnds.length > 0 : supplies.some(({ id }) => id === plug);

const withBay = (
  bench: PowerBench,
  bay: number,
  put: PowerBench['bays'][number]['put'],
): PowerBench => ({
  ...bench,
  bays: bench.bays.map((one, i) => (i === bay ? { ...one, put } : one)),
});

function happenings(
  setup: PowerSetup,
  before: PowerBench,
  bench: PowerBench,
  action: PowerAction,
): Happening[] {
  const happened: Happening[] = [];
  if (action.do === 'hand-control') {
    const live = isPowerOn(before);
    if (action.connected && live) happened.push({ code: 'hand-control-live' });
    else if (live) happened.push({ code: 'hand-control-pulled-live' });
    else if (action.connected && before.on) happened.push({ code: 'hand-control-with-switch-on' });
  }
  if (action.do === 'plug') {
    if (before.on) happened.push({ code: 'supply-with-switch-on' });
    const supply = setup.supplies.find(({ id }) => id === action.supply);
    if (supply?.form === 'mains-adapter')
      happened.push({ code: 'mains-outdoors', supply: supply.id });
  }
  const movesCells = action.do === 'put' || action.do === 'take' || action.do === 'turn';
  if (movesCells && before.plugged === holderPlug)
    happened.push({ code: 'cells-moved-while-plugged' });

  const { computer, volts } = terminalsOf(setup, bench);
  const was = terminalsOf(setup, before).computer;
  const harmed = harm(computer);
  if (harmed !== null && computer !== was && volts !== null) happened.push({ code: harmed, volts });
  if (action.do === 'slew') {
    const sagged = slewingV(setup, before);
    if (sagged !== null && sagged < setup.needs.resetBelowV)
      happened.push({ code: 'reset', volts: sagged });
  }
  return happened;
}

const harm = (computer: ComputerState): 'reverse-polarity' | 'over-voltage' | null =>
  computer === 'reversed' ? 'reverse-polarity' : computer === 'over-voltage' ? computer : null;

/** The bench after all actions and what happened on the way; null where one of them cannot be done. */
export function replay(
  setup: PowerSetup,
  start: PowerBench,
  actions: readonly PowerAction[],
): { bench: PowerBench; happened: readonly Happening[] } | null {
  let bench = start;
  const happened: Happening[] = [];
  for (const action of actions) {
    const acted = act(setup, bench, action);
    if (acted === null) return null;
    bench = acted.bench;
    happened.push(...acted.happened);
  }
  return { bench, happened };
}
