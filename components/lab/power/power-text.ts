import type { PowerTemplate } from '@/lib/variants/bench/power/power-variant';
import type { BenchText } from '../bench/bench-text';

export const powerText: BenchText<PowerTemplate> = {
  name: 'Power',
  task: 'Power it safely',
  hint: 'Put cells in, choose a supply, switch on in the right order, and tell whether it lasts.',
  whatItIs:
    'Give a telescope its power without harming it. Put cells into a holder, read the labels of supplies whose plugs all fit, watch the volts at the terminals, and work out whether the cells last the night. About ten minutes.',
  lead: 'Every round has another bench: other cells, springs, labels and currents.',
  outcomeTitle: 'How it was powered, and what the telescope got',
  keyLead:
    'Each student finds another bench: other letters on the cells and supplies, springs at other ends, another current, another temperature. What there is to do stays the same within one kind of task.',
  templates: {
    'fill-the-holder': {
      name: 'Fill the holder',
      hint: 'Choose eight cells that belong together, put each in the right way round, and switch on.',
    },
    'choose-the-supply': {
      name: 'Choose the supply',
      hint: 'Six supplies whose plugs all fit: say what speaks against each, and use the one that serves.',
    },
    'find-the-reversed': {
      name: 'Find the reversed cell',
      hint: 'A closed holder with cells the wrong way round: find them with a meter.',
    },
    'last-the-night': {
      name: 'Will it last?',
      hint: 'Work out the run time and the volts while slewing for a cold evening, and plan for it.',
    },
    'switch-on': {
      name: 'Switch it on',
      hint: 'A bench as somebody left it: put right what is wrong and connect everything in order.',
    },
  },
};
