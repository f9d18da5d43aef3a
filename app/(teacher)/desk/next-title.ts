import { labText } from '@/components/grading/template-text';
import type { Lab } from '@/lib/variants/labs';

/** An assignment of the class: its labs and its title. */
type Taken = { labs: readonly Lab[]; title: string };

/** A title of each lab to start with: numbered on from the class's others of it, and none of theirs. */
export const nextTitles = (taken: readonly Taken[]): Readonly<Record<Lab, string>> => ({
  'put-it-together': nextTitle('put-it-together', taken),
  level: nextTitle('level', taken),
  balance: nextTitle('balance', taken),
  power: nextTitle('power', taken),
  finder: nextTitle('finder', taken),
  field: nextTitle('field', taken),
  'clock-and-place': nextTitle('clock-and-place', taken),
  'pick-the-pair': nextTitle('pick-the-pair', taken),
  'alignment-run': nextTitle('alignment-run', taken),
  'what-went-wrong': nextTitle('what-went-wrong', taken),
  'dress-rehearsal': nextTitle('dress-rehearsal', taken),
  'lesson-questions': nextTitle('lesson-questions', taken),
});

function nextTitle(lab: Lab, taken: readonly Taken[]): string {
  const titles = taken.map(({ title }) => title);
  const titleOf = (number: number): string =>
    number === 1 ? labText[lab].name : `${labText[lab].name} ${number}`;
  let number =
    taken.filter(({ labs: [only, ...more] }) => only === lab && more.length === 0).length + 1;
  while (titles.includes(titleOf(number))) number += 1;
  return titleOf(number);
}
