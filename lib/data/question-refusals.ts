import type { ItemRefusal } from '../items/judgement';

const refusals: Readonly<Record<ItemRefusal['code'], string>> = {
  'other-question': 'This answer belongs to another question. Load the page again.',
  'no-answer': 'Give an answer first.',
  unfinished: 'Not every part has an answer yet. Finish it, then check.',
  'not-a-number': 'That is not a number. Write it in figures, such as 35 or 2.5.',
};

/** Why an answer could not be marked; it uses nothing up. */
export const refusalText = (code: ItemRefusal['code']): string => refusals[code];
