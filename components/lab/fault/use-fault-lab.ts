'use client';

import { useState } from 'react';
import { looks } from '@/lib/variants/fault-variant';
import type { Look } from '@/lib/variants/fault-variant';
import type { CureId, FaultId } from '@/lib/faults/fault-ids';
import type { FaultDraft } from '@/lib/grading/fault-submission';
import { landingInWords } from './evidence/landing-words';
import { lookWords } from './evidence/look-words';
import { cureWords } from './cure-words';
import type { FaultChoice, FaultChoiceAction, FaultStep } from './fault-choice';
import { changeFaultChoice, startFaultChoice } from './fault-choice';
import type { FaultView } from './fault-view';
import { faultWords } from './fault-words';

/** The lab as its parts see it: the evening, what has been looked at and named, what can be done. */
export type FaultLabModel = {
  view: FaultView;
  choice: FaultChoice;
  /** In the order of the board. */
  seen: readonly Look[];
  /** The last thing opened here, for the focus. */
  justOpened: Look | 'test-slew' | null;
  /** For the status line. */
  said: string;
  look: (look: Look) => void;
  testSlew: (hip: number) => void;
  nameFault: (fault: FaultId) => void;
  nameCure: (cure: CureId) => void;
  goOn: () => void;
  goTo: (step: FaultStep) => void;
  undo: () => void;
};

type FaultLabInput = {
  view: FaultView;
  draft: FaultDraft;
  onDraft: (draft: FaultDraft) => void;
};

/** The lab's state: one choice and one sentence for the status line. */
export function useFaultLab({ view, draft, onDraft }: FaultLabInput): FaultLabModel {
  const [choice, setChoice] = useState(() => startFaultChoice(draft));
  const [justOpened, setJustOpened] = useState<Look | 'test-slew' | null>(null);
  const [said, say] = useState('');

  const act = (action: FaultChoiceAction, message: string): boolean => {
    const next = changeFaultChoice(choice, action);
    if (next === choice) return false;
    setChoice(next);
    say(message);
    if (next.draft !== choice.draft) onDraft(next.draft);
    return true;
  };

  return {
    view,
    choice,
    seen: looks.filter((look) => view.open.includes(look) || choice.draft.looked.includes(look)),
    justOpened,
    said,
    look: (look) => {
      if (act({ type: 'look', look }, `Open now: ${lookWords[look].title}.`)) setJustOpened(look);
    },
    testSlew: (hip) => {
      const landing = view.testSlews.find((slew) => slew.hip === hip);
      if (landing === undefined) return;
      if (act({ type: 'test-slew', hip }, `${landing.name}: ${landingInWords(landing)}.`))
        setJustOpened('test-slew');
    },
    nameFault: (fault) => {
      act({ type: 'name-fault', fault }, `Named: ${faultWords[fault].name}.`);
    },
    nameCure: (cure) => {
      act({ type: 'name-cure', cure }, `Chosen: ${cureWords[cure].name}.`);
    },
    goOn: () => {
      act({ type: 'go-on' }, '');
    },
    goTo: (step) => {
      act({ type: 'go-to', step }, '');
    },
    undo: () => {
      act({ type: 'undo' }, 'The last choice is taken back. What was looked at stays looked at.');
    },
  };
}
