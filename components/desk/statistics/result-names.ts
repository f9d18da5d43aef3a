import {
  gateWords as balanceGate,
  criterionWords as balanceCriteria,
} from '@/components/lab/balance/balance-result-words';
import { criterionNames as clockCriteria } from '@/components/lab/clock-and-place/clock-result-words';
import { stageWords } from '@/components/lab/dress-rehearsal/stage-words';
import { fieldCriterionName } from '@/components/lab/field/field-slip-words';
import { finderCriterionNames } from '@/components/lab/finder/finder-result-words';
import {
  criterionNames as levelCriteria,
  gateWords as levelGate,
} from '@/components/lab/level/level-result-words';
import {
  criterionNames as powerCriteria,
  gateWords as powerGate,
} from '@/components/lab/power/power-result-words';
import {
  criterionName as buildCriteria,
  gateWords as buildGates,
} from '@/components/lab/put-it-together/slip-words';
import type { BalanceGate } from '@/lib/grading/bench/balance/balance-result';
import type { FinderGate } from '@/lib/grading/bench/finder/finder-result';
import { powerGates } from '@/lib/grading/bench/power/power-result';
import type { PairCriterion } from '@/lib/grading/pair-result';
import type { FaultCriterion } from '@/lib/grading/fault-result';
import type { RunCriterion } from '@/lib/grading/run-result';
import type { Lab } from '@/lib/variants/labs';

/* Criteria and gates of every lab as a class's figures call them: without one student's details. */

const pairCriteria: Readonly<Record<PairCriterion['id'], string>> = {
  'first-star': 'First star',
  'second-star': 'Second star',
  geometry: 'How the two lie to each other',
  'none-usable': 'Saying that there is no good pair',
};
const runCriteria: Readonly<Record<RunCriterion['id'], string>> = {
  'start-position': 'Start position',
  'first-star': 'The right first star',
  'first-centring': 'How well it was centred',
  'second-star': 'The right second star',
  'second-centring': 'How well that was centred',
  pair: 'How the two lie to each other',
  judgement: 'Judgement of the result',
  time: 'Time under the sky',
};
const faultCriteria: Readonly<Record<FaultCriterion['id'], string>> = {
  fault: 'The fault named',
  cure: 'The cure named',
  looks: 'Few looks beyond what lay open',
};
const rehearsalCriteria: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(stageWords).map(([stage, { title }]) => [stage, title]),
);

const criteria: Readonly<Record<Lab, Readonly<Record<string, string>>>> = {
  'put-it-together': buildCriteria,
  level: levelCriteria,
  balance: balanceCriteria,
  power: powerCriteria,
  finder: finderCriterionNames,
  field: fieldCriterionName,
  'clock-and-place': clockCriteria,
  'pick-the-pair': pairCriteria,
  'alignment-run': runCriteria,
  'what-went-wrong': faultCriteria,
  'dress-rehearsal': rehearsalCriteria,
  'lesson-questions': {},
};

/** A criterion of an old grader that has no name any more is shown as it stands. */
export const criterionTitle = (lab: Lab, id: string): string => criteria[lab][id] ?? id;

const finderGates: Readonly<Record<FinderGate['id'], string>> = {
  'near-sun': 'the open tube came too near to the Sun',
  'no-adult': 'no adult stood beside the open telescope by day',
  'not-in-shadow': 'the open telescope stood in the sunshine',
  'left-open': 'the telescope was left open by day',
};
const balanceGates = ['opened-unsupported', 'let-go-loose'] as const satisfies BalanceGate['id'][];

const gates: Readonly<Record<string, string>> = {
  'tube-fell': buildGates['tube-fell'].title,
  'tipped-over': buildGates['tipped-over'].title,
  'caps-off-by-day': buildGates['caps-off-by-day'].title,
  'leg-left-open': levelGate({ id: 'leg-left-open', leg: 0 }).title,
  ...Object.fromEntries(
    balanceGates.map((id) => [id, balanceGate({ id, times: 1, outcome: 'fell' }).title]),
  ),
  ...Object.fromEntries(powerGates.map((id) => [id, powerGate({ id }).title])),
  ...finderGates,
  sun: 'too close to the Sun',
};

/** "level/leg-left-open" of a rehearsal says its stage too. */
export function gateTitle(id: string): string {
  const [own = id, ofStage] = id.split('/');
  if (ofStage === undefined) return gates[own] ?? own;
  const stage = rehearsalCriteria[own] ?? own;
  if (own === 'pack-up') return `${stage}: packed up dangerously`;
  return `${stage}: ${gates[ofStage] ?? ofStage}`;
}
