import { criterionWords as balanceCriteria } from '@/components/lab/balance/balance-result-words';
import { criterionNames as clockCriteria } from '@/components/lab/clock-and-place/clock-result-words';
import { criterionWords as rehearsalCriterion } from '@/components/lab/dress-rehearsal/result-words';
import { fieldCriterionName } from '@/components/lab/field/field-slip-words';
import { finderCriterionNames } from '@/components/lab/finder/finder-result-words';
import { criterionNames as levelCriteria } from '@/components/lab/level/level-result-words';
import { criterionNames as powerCriteria } from '@/components/lab/power/power-result-words';
import { criterionName as togetherCriteria } from '@/components/lab/put-it-together/slip-words';
import type { AttemptResult } from '@/lib/data/attempts';
import { faultCriterionInWords } from '@/components/grading/fault/fault-result-words';
import { criterionInWords } from '@/components/grading/pair/pair-result-words';
import { runCriterionInWords } from '@/components/grading/run/run-result-words';

type LabResult = NonNullable<AttemptResult['result']>;

/** The criteria of a result by their ids, in the words that the result itself uses for them. */
export function criterionNames(result: LabResult): { id: string; name: string }[] {
  switch (result.lab) {
    case 'pick-the-pair':
      return result.criteria.map((one) => ({ id: one.id, name: criterionInWords(one, result) }));
    case 'alignment-run':
      return result.criteria.map((one) => ({ id: one.id, name: runCriterionInWords(one, result) }));
    case 'what-went-wrong':
      return result.criteria.map((one) => ({
        id: one.id,
        name: faultCriterionInWords(one, result),
      }));
    case 'lesson-questions':
      return result.items.map((_, index) => ({
        id: `question-${String(index + 1)}`,
        name: `Question ${String(index + 1)}`,
      }));
    case 'put-it-together':
      return result.criteria.map(({ id }) => ({ id, name: togetherCriteria[id] }));
    case 'level':
      return result.criteria.map(({ id }) => ({ id, name: levelCriteria[id] }));
    case 'balance':
      return result.criteria.map(({ id }) => ({ id, name: balanceCriteria[id] }));
    case 'power':
      return result.criteria.map(({ id }) => ({ id, name: powerCriteria[id] }));
    case 'finder':
      return result.criteria.map(({ id }) => ({ id, name: finderCriterionNames[id] }));
    case 'field':
      return result.criteria.map(({ id }) => ({ id, name: fieldCriterionName[id] }));
    case 'clock-and-place':
      return result.criteria.map(({ id }) => ({ id, name: clockCriteria[id] }));
    case 'dress-rehearsal':
      return result.criteria.map(({ id }) => ({ id, name: rehearsalCriterion(id) }));
  }
}

/** By name only, where no result is at hand: what differs between two marks of the same work. */
export function criterionName(lab: LabResult['lab'], id: string): string {
  const names: Readonly<Record<string, string>> = namesOf[lab];
  return names[id] ?? id.replaceAll('-', ' ');
}

const namesOf: Readonly<Record<LabResult['lab'], Readonly<Record<string, string>>>> = {
  'pick-the-pair': {
    'first-star': 'First star',
    'second-star': 'Second star',
    geometry: 'How the two lie to each other',
    'none-usable': 'Saying that there is no good pair',
  },
  'alignment-run': {
    'start-position': 'Start position',
    'first-star': 'The right first star',
    'first-centring': 'Centring the first star',
    'second-star': 'The right second star',
    'second-centring': 'Centring the second star',
    pair: 'How the two lie to each other',
    judgement: 'Trusting it or not',
    time: 'Time',
  },
  'what-went-wrong': { fault: 'The fault named', cure: 'The cure named', looks: 'Looks' },
  'lesson-questions': {},
  'put-it-together': togetherCriteria,
  level: levelCriteria,
  balance: balanceCriteria,
  power: powerCriteria,
  finder: finderCriterionNames,
  field: fieldCriterionName,
  'clock-and-place': clockCriteria,
  'dress-rehearsal': {},
};
