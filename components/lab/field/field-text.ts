import type { FieldTemplate } from '@/lib/variants/bench/field/field-variant';
import type { BenchText } from '../bench/bench-text';

export const fieldText: BenchText<FieldTemplate> = {
  name: 'Field',
  task: 'Choose the eyepiece',
  hint: 'Pick the eyepiece for a cluster, a double or the Moon; reckon how much sky it shows and which way the tube must go.',
  whatItIs:
    'Put the right eyepiece in for what you want to see, bring it into focus, reckon how much sky it shows and how long a star takes across, and say which way the tube must go in a view that may be turned. About eight minutes a round.',
  lead: 'How much sky an eyepiece shows decides whether a cluster fits, whether a star that was found by the dot is in view at all, and how long it stays there.',
  outcomeTitle: 'Which eyepiece was chosen, what it shows, and which way is which',
  keyLead:
    'Each student gets a target, a box of eyepieces and a place in the view of their own. Below is one of each kind with its model answer.',
  templates: {
    'whole-cluster': {
      name: 'A cluster, whole',
      hint: 'A cluster of known size is to be seen whole and as large as that allows.',
    },
    'split-the-double': {
      name: 'A double, split',
      hint: 'Two stars of known distance; now and then no eyepiece can part them with this aperture.',
    },
    'whole-moon': {
      name: 'The Moon, whole',
      hint: 'The Moon is to fill the field without hanging over its edge.',
    },
    'by-the-drift': {
      name: 'An eyepiece without a label',
      hint: 'How long a star took across its field tells which one it is.',
    },
    'lost-star': {
      name: 'Beside the dot',
      hint: 'The dot is off by a known amount: which eyepiece still has the star, and where in it?',
    },
  },
};
