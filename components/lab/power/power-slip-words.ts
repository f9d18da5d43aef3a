import type { SlipWords } from '@/components/grading/bench-result-view';
import type { PowerSlip } from '@/lib/grading/bench/power/power-result';
import { baysText, computerWords, kindNames, listed, voltsText } from './power-words';

type Told =
  | 'wrong-supply'
  | 'verdict-wrong'
  | 'count-wrong'
  | 'many-readings'
  | 'mean-current-off'
  | 'run-time-off'
  | 'slewing-volts-off'
  | 'reset-misjudged'
  | 'plan-wrong'
  | 'cells-reversed';

const order = 'Switch off, hand control, supply, switch on.';

/** Words for slips with cells, plugs and the switch. */
export function wiringSlipWords(slip: Exclude<PowerSlip, { code: Told }>): SlipWords {
  switch (slip.code) {
    case 'mains-outdoors':
      return {
        what: `Mains adapter ${slip.supply} was plugged in on the field.`,
        why: 'Its label agrees, and still it is wrong: damp and mains voltage do not go together.',
        next: 'Outdoors a student takes batteries. A mains adapter is the teacher’s, dry and on a protected socket.',
      };
    case 'reverse-polarity':
      return {
        what: `The telescope was switched on at ${voltsText(slip.volts)}.`,
        why: 'A minus on the meter at the socket says that plus and minus are exchanged.',
        next: 'Read the meter’s sign, and the mark beside the socket, before the switch goes on.',
      };
    case 'over-voltage':
      return {
        what: `The telescope was switched on at ${voltsText(slip.volts)}; it is made for 12 V.`,
        why: 'More amperes than needed do no harm, more volts do.',
        next: 'Compare the volts first: they must be equal.',
      };
    case 'hand-control-live':
      return {
        what: 'The hand control went in while the power was on.',
        why: 'Its contacts meet one after another: for a moment the wrong ones have power.',
        next: order,
      };
    case 'hand-control-pulled-live':
      return {
        what: 'The hand control came off while the power was on.',
        why: 'Contacts part one after another, as they meet.',
        next: 'Switch off before any plug goes in or out.',
      };
    case 'hand-control-with-switch-on':
      return {
        what: 'The hand control went in while the switch stood on.',
        why: 'Nothing was plugged in, so nothing happened; you cannot count on that in the dark.',
        next: 'Look at the switch first: it must stand off.',
      };
    case 'supply-with-switch-on':
      return {
        what: 'The supply went in while the switch stood on.',
        why: 'The computer then gets its power with a spark at the plug, on and off in an instant.',
        next: order,
      };
    case 'supply-before-hand-control':
      return {
        what: 'The supply went in before the hand control.',
        why: 'One careless touch of the switch, and the hand control goes in with the power on.',
        next: order,
      };
    case 'switch-not-last':
      return {
        what: 'The switch did not go on last.',
        why: 'It is the one step that brings the power: everything else must stand by then.',
        next: order,
      };
    case 'cells-moved-while-plugged':
      return {
        what: 'Cells were moved while the holder was plugged in.',
        why: 'With half of the cells in, or one the wrong way round, the telescope gets what it should never get.',
        next: 'Take the holder’s plug out, do the cells, read the meter, then plug it in.',
      };
    case 'kinds-mixed':
      return {
        what: `Kinds were mixed: ${listed(slip.kinds.map((kind) => kindNames[kind]))}.`,
        why: 'They empty at different speeds. The one that is empty first is forced backwards by the others, and leaks.',
        next: 'Eight of one kind, all put in together.',
      };
    case 'used-among-fresh':
      return {
        what: `Used among fresh: ${slip.cells.length === 1 ? 'cell' : 'cells'} ${listed(slip.cells)}.`,
        why: 'The poorest cell decides how long all eight last, and is forced backwards at the end.',
        next: 'Hold each across the meter: what reads lower than others of its kind has been used.',
      };
    case 'bays-empty':
      return {
        what: `Left empty: ${baysText(slip.bays)}.`,
        why: 'In series the current passes through every bay: with one empty nothing flows.',
        next: 'Fill every bay before the holder is plugged in.',
      };
    case 'slew-resets':
      return {
        what: `While slewing the volts fall to ${voltsText(slip.volts)}, below ${voltsText(slip.resetBelowV)}.`,
        why: 'The computer starts afresh and forgets its alignment: two stars have to be found again.',
        next: 'After switching on, slew once at full speed and watch the meter, before you align.',
      };
    case 'not-running':
      return {
        what: `It was handed in with the telescope not running. ${computerWords[slip.computer]}.`,
        why: 'Cells, plug and switch form one circuit; somewhere it is open or too weak.',
        next: 'Follow it from the holder to the lamp with the meter.',
      };
  }
}
