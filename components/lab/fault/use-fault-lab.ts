'use client';

import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
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
import { LookAsker, type AskName, type Looking, type LookUp } from './look-asker';

/** The lab as its parts see it: the evening, what has been looked at and named, what can be done. */
export type FaultLabModel = {
  /** With all the evidence that has come so far. */
  view: FaultView;
  choice: FaultChoice;
  /** In the order of the board. */
  seen: readonly Look[];
  /** What has been asked for and is not here, or not yet. */
  asked: Looking['asked'];
  /** The last thing asked for here, for the focus. */
  justOpened: AskName | null;
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
  onLook: LookUp;
};

const seenOf = ({ evidence }: Pick<FaultView, 'evidence'>): Look[] =>
  looks.filter((look) => evidence[look] !== undefined);

/** A draft that this device kept may not know what another one has asked for. */
function withWhatIsSeen(draft: FaultDraft, view: FaultView): FaultDraft {
  const others = seenOf(view).filter(
    (look) => !view.open.includes(look) && !draft.looked.includes(look),
  );
  return {
    ...draft,
    looked: [...draft.looked, ...others],
    testSlew: view.testSlew?.hip ?? draft.testSlew,
  };
}

/** The lab's state: one choice, the evidence so far, and one sentence for the status line. */
export function useFaultLab({ view, draft, onDraft, onLook }: FaultLabInput): FaultLabModel {
  const [choice, setChoice] = useState(() => startFaultChoice(withWhatIsSeen(draft, view)));
  const [justOpened, setJustOpened] = useState<AskName | null>(null);
  const [said, say] = useState('');
  const [asker] = useState(() => {
    const { evidence, testSlew, places } = view;
    return new LookAsker({ evidence, testSlew, places }, onLook);
  });
  const { seen, asked } = useSyncExternalStore(asker.subscribe, asker.state, asker.state);
  // Evidence comes when it comes: by then more may have been chosen than when it was asked for.
  const latest = useRef(choice);

  const act = (action: FaultChoiceAction, message?: string): void => {
    const now = latest.current;
    const next = changeFaultChoice(now, action);
    if (next === now) return;
    latest.current = next;
    setChoice(next);
    if (message !== undefined) say(message);
    if (next.draft !== now.draft) onDraft(next.draft);
  };

  // What this tab asked for before it was loaded again, and the page does not bring along.
  useEffect(() => {
    const { looked, testSlew } = latest.current.draft;
    const { evidence, testSlew: landed } = asker.state().seen;
    for (const look of looked) if (evidence[look] === undefined) void asker.ask(look);
    if (testSlew !== null && landed === null) void asker.ask({ testSlew });
  }, [asker]);

  return {
    view: { ...view, ...seen },
    choice,
    seen: seenOf(seen),
    asked,
    justOpened,
    said,
    look: (look) => {
      setJustOpened(look);
      say(`${lookWords[look].title}: on its way.`);
      void asker.ask(look).then((shown) => {
        if (shown !== null) act({ type: 'look', look });
        say(shown === null ? '' : `Open now: ${lookWords[look].title}.`);
      });
    },
    testSlew: (hip) => {
      setJustOpened('test-slew');
      say('The telescope is on its way.');
      void asker.ask({ testSlew: hip }).then((shown) => {
        const landing = shown?.testSlew ?? null;
        if (landing !== null) act({ type: 'test-slew', hip: landing.hip });
        say(landing === null ? '' : `${landing.name}: ${landingInWords(landing)}.`);
      });
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
