import type { HelpLevel } from '../../mastery/sign-off';

/** What a teacher sees, by the help that it took. */
export const vignettes: Readonly<Record<HelpLevel, readonly string[]>> = {
  1: [
    'Robin looks on while the teacher does it and explains',
    'Robin watches each step being shown',
    'Robin has it shown from beginning to end',
  ],
  2: [
    'Alex does it while the teacher’s hands help along',
    'Alex works, and the teacher says each next step',
    'Alex gets stuck twice, and the teacher does those steps along',
  ],
  3: [
    'Kim does it, and is once asked “and the clamp?”',
    'Kim works on and needs a word at one step',
    'Kim does it all, with a single reminder',
  ],
  4: [
    'Sam does it all, the teacher stands by without a word',
    'Sam does it and says why, nobody helps',
    'Sam finds a slip and mends it without a word from anybody',
  ],
};

/** Gates that an evening can fail, as the card names them. */
export const gateSlips = [
  'cap off before sunset',
  'tube let go in an open clamp',
  'hand control pulled live',
  'mount lifted alone',
  'fingers in the folding legs',
] as const;
