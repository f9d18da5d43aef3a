import type { DressRehearsalTemplate } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import type { BenchText } from '../bench/bench-text';

export const dressRehearsalText: BenchText<DressRehearsalTemplate> = {
  name: 'Dress rehearsal',
  task: 'The whole evening',
  hint: 'One evening from the box to the box: every slip comes back at the eyepiece.',
  whatItIs:
    'Build, level, balance, set the finder, power up, set clock and place, align, check, pack up: one evening in eleven stages, each on what the one before has left. What is left crooked comes back at the eyepiece with the size it really has. It takes about an hour, and you may go back at any time.',
  lead: 'Choose where and when, and with which telescope. The evening is then laid out for you.',
  outcomeTitle: 'How the evening went, and what each slip cost',
  keyLead:
    'Every student has an evening of their own: other ground, tube, cells, card and small errors of the telescope. This is a perfect one.',
  templates: {
    'from-the-boxes': {
      name: 'From the boxes',
      hint: 'Everything is set up anew, from the first leg on.',
    },
    'somebody-set-it-up': {
      name: 'Somebody set it up before',
      hint: 'Two stages are done already, each with a slip still to be found.',
    },
    'windy-evening': {
      name: 'A windy evening',
      hint: 'Soft ground, and somebody meets a leg: what was left loose will move.',
    },
    'cold-evening': {
      name: 'A cold evening',
      hint: 'Frost: the cells give less than their label says, and it has to be reckoned.',
    },
    'hurried-evening': {
      name: 'A hurried evening',
      hint: 'Little time under the sky, and one stage that somebody has done already.',
    },
  },
};
