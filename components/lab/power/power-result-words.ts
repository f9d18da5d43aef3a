import type { SlipWords } from '@/components/grading/bench-result-view';
import type {
  MeanCurrentMistake,
  PowerCriterion,
  PowerGate,
  PowerResult,
  PowerSlip,
  RunTimeMistake,
  SlewingVoltsMistake,
} from '@/lib/grading/bench/power/power-result';
import type { SupplyVerdict } from '@/lib/power/supply';
import { wiringSlipWords } from './power-slip-words';
import { baysText, planNames, verdictNames, voltsText } from './power-words';

export function verdictOf({ total, gates, slips, template }: PowerResult): string {
  if (gates.length > 0) return 'Something was done that can end a telescope or hurt somebody.';
  if (template === 'last-the-night')
    return slips.length === 0
      ? 'You know what these cells will do tonight.'
      : 'The night is partly worked out: look at the sums again.';
  if (slips.length === 0)
    return 'It runs, and was connected as it should be: nothing to do differently.';
  return total >= 70
    ? 'It runs, with something to do better.'
    : 'This would not have gone well outdoors.';
}

export const criterionNames: Readonly<Record<PowerCriterion, string>> = {
  cells: 'Cells that belong together',
  'way-round': 'Each the right way round',
  repaired: 'The bay put right',
  supply: 'The supply used',
  verdicts: 'What was said of each supply',
  count: 'How many were reversed',
  found: 'Reversed cells found and turned',
  readings: 'Few readings',
  order: 'The order',
  running: 'It runs, also while slewing',
  'mean-current': 'Mean current',
  'run-time': 'Run time',
  'slewing-volts': 'Volts while slewing',
  resets: 'Whether it starts afresh',
  plan: 'The plan',
};

const gates: Readonly<Record<PowerGate['id'], { title: string; text: string }>> = {
  'mains-outdoors': {
    title: 'a mains adapter outdoors',
    text: 'Mains voltage and damp grass can kill. A mains adapter is the teacher’s alone: dry, on a protected socket, by local rules. Students use batteries.',
  },
  'reverse-polarity': {
    title: 'plus and minus exchanged',
    text: 'The telescope got its volts the wrong way round. That can end its electronics in an instant.',
  },
  'over-voltage': {
    title: 'too many volts',
    text: 'The telescope got far more volts than it is made for. That can burn its electronics.',
  },
  'hand-control-live': {
    title: 'the hand control connected with the power on',
    text: 'A plug that goes in touches the wrong contacts for a moment. With the power on that can end hand control and computer.',
  },
};
export const gateWords = ({ id }: PowerGate): { title: string; text: string } => gates[id];

export const whyNotSupply: Readonly<Record<SupplyVerdict, string>> = {
  fits: 'All of it agrees with the telescope’s label.',
  'wrong-polarity': 'Its middle pin carries the other sign than the telescope’s socket wants.',
  'too-many-volts': 'Its label says more volts than the telescope’s.',
  'too-few-volts': 'Its label says fewer volts than the telescope’s.',
  'too-little-current':
    'Its label says fewer amperes than the telescope takes while it slews: then the volts fall and the computer starts afresh.',
  'mains-outdoors': 'Whatever its label says: it is a mains adapter, and this is a field.',
};

/** What happened, how far off, why it matters, and what to do next time. */
export function slipWords(slip: PowerSlip): SlipWords {
  switch (slip.code) {
    case 'wrong-supply':
      return {
        what: `Supply ${slip.supply} was used: ${verdictNames[slip.why]}.`,
        why: `${whyNotSupply[slip.why]} A plug that fits proves nothing.`,
        next: 'Hold each label against the telescope’s: volts equal, polarity equal, amperes at least as many.',
      };
    case 'verdict-wrong':
      return {
        what: `Of supply ${slip.supply} you said “${verdictNames[slip.said]}”; it is “${verdictNames[slip.right]}”.`,
        why: whyNotSupply[slip.right],
        next:
          slip.said === 'too-many-volts' || slip.right !== 'fits'
            ? 'Read three things off each label, in the same order each time: volts, polarity, amperes.'
            : 'More amperes than the peak do no harm: a telescope takes only what it needs.',
      };
    case 'count-wrong':
      return {
        what: `You counted ${String(slip.said)} reversed; there were ${String(slip.right)}.`,
        why: `The whole holder read ${voltsText(slip.openV)} instead of about 12 V. A reversed cell takes away its own 1.5 V and those of another: 3 V for each.`,
        next: 'Take the reading from 12 V and divide by three.',
      };
    case 'many-readings':
      return {
        what: `You took ${String(slip.taken)} readings; ${String(slip.enough)} would have done.`,
        why: 'Half a holder that reads 6 V holds no reversed cell: none of its bays need be read.',
        next: 'Read the whole, then halves, and go on only where volts are missing.',
      };
    case 'mean-current-off':
      return {
        what: `You had ${String(Math.round(slip.said))} mA as the mean current; it is ${String(Math.round(slip.right))} mA.`,
        why: meanCurrentWhy(slip.mistake),
        next: 'Each current times its share of the time, then added.',
      };
    case 'run-time-off':
      return {
        what: `You had ${slip.said.toFixed(1)} hours; the cells last about ${slip.right.toFixed(1)} (${percentOff(slip)}).`,
        why: runTimeWhy(slip.mistake),
        next: 'Usable capacity at the mean current, times what the cold leaves, divided by the mean current.',
      };
    case 'slewing-volts-off':
      return {
        what: `You had ${voltsText(slip.said)} while slewing; it is ${voltsText(slip.right)}, off by ${voltsText(Math.abs(slip.said - slip.right))}.`,
        why: slewingVoltsWhy(slip.mistake),
        next: 'Eight times a cell’s volts, less the slewing current times eight times a cell’s ohms.',
      };
    case 'reset-misjudged':
      return {
        what: `The computer ${slip.resets ? 'does' : 'does not'} start afresh while it slews.`,
        why: `At full speed the socket has ${voltsText(slip.volts)}; the limit is ${voltsText(slip.resetBelowV)}. A computer that starts afresh has lost its alignment.`,
        next: 'Hold the volts while slewing against the limit, not those at rest.',
      };
    case 'plan-wrong':
      return {
        what: `Your plan was “${planNames[slip.said]}”.`,
        why:
          slip.right === 'other-supply'
            ? 'A slew pulls these cells too low in the cold, fresh or not: a spare set would do the same.'
            : slip.right === 'spare-set'
              ? 'The cells are empty before the evening ends.'
              : 'The cells last the evening, and a slew does not pull them too low.',
        next: `Better: “${planNames[slip.right]}”.${slip.right === 'spare-set' ? ' Changing them loses the alignment: plan for that too.' : ''}`,
      };
    case 'cells-reversed':
      return {
        what: `Turned round: ${baysText(slip.bays)}.`,
        why: `All eight together then give ${voltsText(slip.openV)} instead of the full volts: each reversed cell takes away its own and those of another, and is forced to charge. It can get hot and leak.`,
        next: 'Minus, the flat end, to the spring; then look at the meter before anything is plugged in.',
      };
    default:
      return wiringSlipWords(slip);
  }
}

const percentOff = ({ said, right }: { said: number; right: number }): string => {
  const percent = Math.round(Math.abs(said / right - 1) * 100);
  return `${String(percent)} % too ${said > right ? 'many' : 'few'}`;
};

function meanCurrentWhy(mistake: MeanCurrentMistake | null): string {
  switch (mistake) {
    case 'tracking-only':
      return 'That is the current while tracking alone; slewing takes its share too.';
    case 'slewing-only':
      return 'That is the current while slewing; most of the time the telescope tracks.';
    case 'plain-mean':
      return 'That is halfway between the two, as if it slewed half of the time.';
    case 'added':
      return 'That is both added: they do not flow at once.';
    case null:
      return 'The two currents count by how long each flows.';
  }
}

function runTimeWhy(mistake: RunTimeMistake | null): string {
  switch (mistake) {
    case 'capacities-added':
      return 'That is eight times as long. In series the volts add, and one current runs through all eight: their capacities do not add.';
    case 'cold-forgotten':
      return 'That is what they last at 20 °C. The cold leaves only a part.';
    case 'tracking-only':
      return 'That is with tracking alone; slewing takes its share too.';
    case 'slewing-all-night':
      return 'That is as if it slewed all night; most of the time it tracks.';
    case null:
      return 'Cells give less the more is drawn, and less in the cold.';
  }
}

function slewingVoltsWhy(mistake: SlewingVoltsMistake | null): string {
  switch (mistake) {
    case 'no-load':
      return 'Those are the volts without a load. Current through the cells’ own ohms costs volts.';
    case 'one-cell':
      return 'That counts the ohms of one cell; the current passes through all eight.';
    case 'tracking-current':
      return 'That is with the tracking current; a slew takes far more.';
    case null:
      return 'Each ampere through each ohm costs one volt.';
  }
}
