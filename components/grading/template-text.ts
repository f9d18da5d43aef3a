import type { PairTemplate } from '@/lib/variants/pair-variant';

/** The kinds of "Pick the pair", as the teacher chooses among them. */
export const templateText: Readonly<Record<PairTemplate, { name: string; hint: string }>> = {
  'free-pair': { name: 'Choose any two', hint: 'Two stars out of the whole sky.' },
  partner: {
    name: 'A partner for a given star',
    hint: 'One star is given; the best second one is to be found.',
  },
  'cloud-bank': {
    name: 'Cloud over part of the sky',
    hint: 'A bank of cloud covers some of the good stars.',
  },
  'mount-proposes': {
    name: 'The mount proposes',
    hint: 'The pointing computer names one star after another; two are to be kept.',
  },
  'none-usable': {
    name: 'Nothing will do tonight',
    hint: 'Looks like any other task; the right answer is to say that there is no good pair.',
  },
};
