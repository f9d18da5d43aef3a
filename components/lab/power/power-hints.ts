import type { PowerTemplate, PowerVariant } from '@/lib/variants/bench/power/power-variant';

const order =
  'The order: switch off, hand control, supply, switch on. Nothing goes into a socket while the switch is on.';

const hints: Readonly<Record<PowerTemplate, readonly string[]>> = {
  'fill-the-holder': [
    'Cells that belong together are of one kind and read the same. Take one up and look at the meter.',
    'The minus end of a cell, the flat one, goes to the spring. In this holder the springs need not alternate.',
    order,
  ],
  'choose-the-supply': [
    'Look at the label beside the telescope’s socket first. Three things must hold: equal volts, equal polarity, and at least the current it takes at the peak.',
    'More amperes than needed do no harm: the telescope takes what it needs. More volts do.',
    `A mains adapter outdoors is the teacher’s. ${order}`,
  ],
  'find-the-reversed': [
    'Read the whole holder first, from the minus lead to the plus lead. Each reversed cell takes away its own volts and those of another: 3 V less for each.',
    'Then halve: four cells that are all right read 6 V, with one reversed 3 V. Halve again where volts are missing.',
    `A cell is turned while the holder’s plug is out. ${order}`,
  ],
  'last-the-night': [
    'The mean current: each current times its share of the time, added. In series one current runs through all cells, so their capacities do not add.',
    'Run time: usable capacity at that current, times what the cold leaves, divided by the mean current.',
    'Volts while slewing: eight times a cell’s volts, less the slewing current times eight times a cell’s ohms.',
  ],
  'switch-on': [
    'Begin with the switch. Then take the holder’s plug out before you touch a cell.',
    'Look for an empty bay, a plus end on a spring, a cell of another kind, and one that reads less on the meter.',
    order,
  ],
};

export const powerHints = ({ template }: PowerVariant): readonly string[] => hints[template];
