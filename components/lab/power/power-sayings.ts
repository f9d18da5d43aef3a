import { capitalised } from '@/lib/wording/capital';
import type { Happening } from '@/lib/power/act';
import { holderPlug, type PowerAction, type PowerBench } from '@/lib/power/power-bench';
import { plugVolts } from '@/lib/power/terminals';
import type { PowerVariant } from '@/lib/variants/bench/power/power-variant';
import { bayName, computerWords, plugName, voltsText, ways } from './power-words';

type Saying = {
  variant: PowerVariant;
  action: PowerAction;
  bench: PowerBench;
  happened: readonly Happening[];
  readout: {
    volts: number | null;
    computer: keyof typeof computerWords;
    restarted: boolean;
  };
  mode: 'practice' | 'check';
};

/**
 * One or two sentences after an action: what is to be seen. In practice also what it means; a check
 * leaves that to its feedback.
 */
export function saidOf(saying: Saying): string {
  const meant = saying.mode === 'practice' ? saying.happened.map((one) => meanings[one.code]) : [];
  return [seen(saying), ...meant].join(' ');
}

function seen({ variant, action, bench, readout }: Saying): string {
  switch (action.do) {
    case 'put':
      return `Cell ${action.cell} is in ${bayName(action.bay)}, ${ways[action.plusEnd]}. ${holderReads(variant, bench)}`;
    case 'take':
      return `The cell is out of ${bayName(action.bay)}.`;
    case 'turn': {
      const end = bench.bays[action.bay]?.put?.plusEnd ?? 'top';
      return variant.template === 'find-the-reversed'
        ? `The cell in ${bayName(action.bay)} is turned round.`
        : `The cell in ${bayName(action.bay)} is turned round: ${ways[end]}. ${holderReads(variant, bench)}`;
    }
    case 'plug':
      return `The plug of ${plugName(action.supply)} is in: ${voltsText(readout.volts)} at the socket.`;
    case 'unplug':
      return 'The plug is out of the telescope.';
    case 'hand-control':
      return action.connected
        ? 'The hand control is connected.'
        : 'The hand control is off its lead.';
    case 'switch':
      return `${computerWords[readout.computer]}. ${voltsText(readout.volts)} at the socket.`;
    case 'slew':
      return readout.restarted
        ? `At full speed the volts fall to ${voltsText(readout.volts)}: the computer starts afresh, and its alignment is lost.`
        : `At full speed the volts fall to ${voltsText(readout.volts)}. It goes on running.`;
    case 'read': {
      const volts = bench.readings.at(-1)?.volts ?? null;
      return `Red on stud ${String(action.red)}, black on stud ${String(action.black)}: ${voltsText(volts)}.`;
    }
  }
}

function holderReads({ setup }: PowerVariant, bench: PowerBench): string {
  const volts = plugVolts(setup, bench, holderPlug, 0);
  return volts === null ? '' : `The holder’s plug has ${voltsText(volts)}.`;
}

const meanings: Readonly<Record<Happening['code'], string>> = {
  'hand-control-live':
    'The power was on: that spark can end a hand control. Switch off before anything is connected.',
  'hand-control-pulled-live': 'The power was on: switch off before its plug comes out.',
  'hand-control-with-switch-on': 'The switch stands on: look at it first, always.',
  'supply-with-switch-on':
    'The switch stood on as the plug went in: the computer got its power with a spark.',
  'cells-moved-while-plugged':
    'The holder was plugged in: take its plug out while cells go in or out.',
  'mains-outdoors':
    'A mains adapter outdoors is the teacher’s alone, dry and on a protected socket. Take it out.',
  'reverse-polarity': 'Plus and minus are exchanged: a telescope may not survive this. Switch off.',
  'over-voltage': 'Far more than it is made for: a telescope may not survive this. Switch off.',
  reset: 'These volts are too few for both motors.',
};

/** Why something cannot be done on the bench as it stands. */
export function whyNot(bench: PowerBench, action: PowerAction): string {
  switch (action.do) {
    case 'put':
      return bench.bays[action.bay]?.put
        ? `${capitalised(bayName(action.bay))} is full: take its cell out first.`
        : 'That cell is in the holder already.';
    case 'take':
    case 'turn':
      return `${capitalised(bayName(action.bay))} is empty.`;
    case 'plug':
      return bench.plugged === null
        ? 'That plug is not on the bench.'
        : `The socket is taken by ${plugName(bench.plugged)}: unplug that first.`;
    case 'unplug':
      return 'Nothing is plugged in.';
    case 'hand-control':
    case 'switch':
      return 'It is like that already.';
    case 'slew':
      return bench.handControl
        ? 'Nothing moves: the computer is not running.'
        : 'Nothing moves: the hand control is not connected.';
    case 'read':
      return 'The two probes need two different studs.';
  }
}
