import type { Look } from '@/lib/variants/fault-variant';

type LookWords = { title: string; asks: string };

/** What each item of evidence is called, and what looking at it would tell. */
export const lookWords: Readonly<Record<Look, LookWords>> = {
  first: {
    title: 'The first slew',
    asks: 'Where did the tube land beside the first star?',
  },
  second: {
    title: 'The second slew',
    asks: 'Where did it land beside the second star?',
  },
  outcome: {
    title: 'What the alignment said',
    asks: 'Do the two stars agree?',
  },
  later: {
    title: 'Go-tos afterwards',
    asks: 'Once aligned, did it find its targets?',
  },
  card: {
    title: 'The settings card',
    asks: 'Which time and place were entered?',
  },
  observations: {
    title: 'What a bystander noticed',
    asks: 'Did anyone see or hear something?',
  },
};

export const testSlewTitle = 'Your test slew';
