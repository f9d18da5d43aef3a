import type { ItemRefusal } from '../items/judgement';

const refusals: Readonly<Record<ItemRefusal['code'], string>> = {
  'other-question': 'This answer belongs to another question. Load the page again.',
  'no-answer': 'Give an answer first.',
  unfinished: 'Not every part has an answer yet. Finish it, then check.',
  'not-a-number':
    'That is not a number in the unit shown. Write figures only, such as 35 or 2.5, and no comma for thousands.',
};

/** Why an answer could not be marked; it uses nothing up. */
export const refusalText = (code: ItemRefusal['code']): string => refusals[code];
