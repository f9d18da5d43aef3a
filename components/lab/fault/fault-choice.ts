import type { CureId, FaultId } from '@/lib/faults/fault-ids';
import type { FaultDraft, FaultSubmission } from '@/lib/grading/fault-submission';
import type { Look } from '@/lib/variants/fault-variant';

export type FaultStep = 'fault' | 'cure' | 'review';

type Named = Pick<FaultDraft, 'fault' | 'cure'> & { step: FaultStep };

/** What has been looked at and named, and what can be taken back of it: names, never looks. */
export type FaultChoice = {
  draft: FaultDraft;
  step: FaultStep;
  past: readonly Named[];
};

export type FaultChoiceAction =
  | { type: 'look'; look: Look }
  | { type: 'test-slew'; hip: number }
  | { type: 'name-fault'; fault: FaultId }
  | { type: 'name-cure'; cure: CureId }
  | { type: 'go-on' }
  | { type: 'go-to'; step: FaultStep }
  | { type: 'undo' };

/** Takes up a draft where it was left. */
export function startFaultChoice(draft: FaultDraft): FaultChoice {
  const step = draft.fault === null ? 'fault' : draft.cure === null ? 'cure' : 'review';
  return { draft, step, past: [] };
}

const remembered = ({ draft, step, past }: FaultChoice): readonly Named[] => [
  ...past,
  { fault: draft.fault, cure: draft.cure, step },
];

/** The choice after an action; the same object where the action changes nothing. */
export function changeFaultChoice(choice: FaultChoice, action: FaultChoiceAction): FaultChoice {
  const { draft } = choice;
  switch (action.type) {
    case 'look':
      return draft.looked.includes(action.look)
        ? choice
        : { ...choice, draft: { ...draft, looked: [...draft.looked, action.look] } };
    case 'test-slew':
      // One test slew an evening: the second would move what the first has shown.
      return draft.testSlew !== null
        ? choice
        : { ...choice, draft: { ...draft, testSlew: action.hip } };
    case 'name-fault':
      return draft.fault === action.fault
        ? choice
        : { ...choice, draft: { ...draft, fault: action.fault }, past: remembered(choice) };
    case 'name-cure':
      return draft.cure === action.cure
        ? choice
        : { ...choice, draft: { ...draft, cure: action.cure }, past: remembered(choice) };
    case 'go-on':
      if (choice.step === 'fault' && draft.fault !== null) return { ...choice, step: 'cure' };
      if (choice.step === 'cure' && draft.cure !== null) return { ...choice, step: 'review' };
      return choice;
    case 'go-to':
      return choice.step === action.step ? choice : { ...choice, step: action.step };
    case 'undo': {
      const last = choice.past.at(-1);
      if (last === undefined) return choice;
      const { fault, cure, step } = last;
      return { draft: { ...draft, fault, cure }, step, past: choice.past.slice(0, -1) };
    }
  }
}

/** What would be sent; null while something is missing. */
export function faultSubmissionOf({ draft }: FaultChoice): FaultSubmission | null {
  const { fault, cure } = draft;
  return fault === null || cure === null ? null : { ...draft, fault, cure };
}
