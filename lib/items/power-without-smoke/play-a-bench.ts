import { replay, type Happening } from '../../power/act';
import { bayEnds, otherEnd } from '../../power/holder';
import { benchAtStart, type PowerAction, type PowerSetup } from '../../power/power-bench';
import type { Centre } from '../../power/supply';
import { terminalsOf, type ComputerState } from '../../power/terminals';

/** What is played: a sound pack, one with the other polarity, or one of too many volts. */
export type PlayedSupply = 'sound' | 'exchanged' | 'strong';

const setupWith = (supply: PlayedSupply): PowerSetup => ({
  needs: {
    nominalV: 12,
    centre: 'positive',
    highestV: 14,
    resetBelowV: 7.2,
    trackingA: 0.2,
    slewingA: 1.2,
  },
  temperatureC: 10,
  springEnds: Array.from({ length: 8 }, (_, i) => bayEnds[i % 2] ?? 'top'),
  cells: Array.from('ABCDEFGH', (id) => ({ id, kind: 'alkaline', left: 1 })),
  supplies: [
    {
      id: 'P',
      form: 'battery-pack',
      ratedA: 3,
      volts: supply === 'strong' ? 24 : 12,
      centre: (supply === 'exchanged' ? 'negative' : 'positive') satisfies Centre,
    },
  ],
  start: {
    bays: Array.from('ABCDEFGH', (cell, i) => ({
      cell,
      plusEnd: otherEnd(bayEnds[i % 2] ?? 'top'),
    })),
    plugged: null,
    handControl: false,
    on: false,
  },
});

type Played = { happened: readonly Happening['code'][]; computer: ComputerState };

/** Plays actions on the engine's bench; a supply's plug is "P". @throws when one cannot be done. */
export function playABench(supply: PlayedSupply, actions: readonly PowerAction[]): Played {
  const setup = setupWith(supply);
  const played = replay(setup, benchAtStart(setup), actions);
  if (played === null) throw new Error('a bench was played that cannot be');
  return {
    happened: played.happened.map(({ code }) => code),
    computer: terminalsOf(setup, played.bench).computer,
  };
}

export const handControlIn: PowerAction = { do: 'hand-control', connected: true };
export const supplyIn: PowerAction = { do: 'plug', supply: 'P' };
export const switchOn: PowerAction = { do: 'switch', on: true };
