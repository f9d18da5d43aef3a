'use client';

import { useRef, type MouseEvent, type ReactNode } from 'react';
import { Button } from '@/components/ui/button';
import { ordinalOf } from './pair-words';
import type { PairLabModel } from './use-pair-lab';

/**
 * What is done next, in reach of a thumb: below the panel, on a phone at the lower edge, whether the panel
 * is open or folded. It comes after the panel for eye, keyboard and reader alike, as what is read there is
 * what is decided here.
 */
export function PairControl({ lab, sending }: { lab: PairLabModel; sending: ReactNode }) {
  const { stage, choice } = lab;
  const swallowSecondClick = useSecondClickSwallowed(JSON.stringify(stage));
  return (
    <div
      role="group"
      aria-label="What next"
      className="space-y-2 border-t-2 border-strong bg-panel px-4 py-2.5 lg:border-s-2 lg:px-5 lg:py-4"
    >
      <div onClickCapture={swallowSecondClick}>
        <NextStep lab={lab} sending={sending} />
      </div>
      <div className="flex flex-wrap gap-2 empty:hidden">
        {stage.at === 'none' ? null : (
          <Button onClick={lab.sayNone}>Tonight has no good pair</Button>
        )}
        {choice.past.length === 0 ? null : <Button onClick={lab.undo}>Undo</Button>}
      </div>
    </div>
  );
}

/**
 * Each step's button stands where the last one's stood: the second click of a double click would answer
 * what nobody has read yet, or submit. Within one step quick clicks count: the mount's proposals can be
 * leafed through. Key presses count no clicks (UI Events, 3.4.1: `detail`).
 */
function useSecondClickSwallowed(step: string): (event: MouseEvent) => void {
  const clickedIn = useRef(step);
  return (event) => {
    if (event.detail > 1 && clickedIn.current !== step) {
      event.preventDefault();
      event.stopPropagation();
    } else clickedIn.current = step;
  };
}

const wide = 'w-full';

function NextStep({ lab, sending }: { lab: PairLabModel; sending: ReactNode }): ReactNode {
  const { stage, selected } = lab;
  switch (stage.at) {
    case 'review':
    case 'none':
      return sending;
    case 'look-alike':
      return <LookAlikeAnswers lab={lab} hip={stage.hip} />;
    case 'first-star':
    case 'second-star':
      return lab.sky.task === 'mount-proposes' ? (
        <ProposalAnswers lab={lab} />
      ) : selected === null || selected.star === null || isKept(lab) ? null : (
        <Button variant="primary" size="large" className={wide} onClick={lab.keepSelected}>
          Keep as {ordinalOf(lab.choice.draft.picks.length)} star
        </Button>
      );
  }
}

/** Whether the light in hand is kept already. */
export const isKept = ({ selected, choice }: PairLabModel): boolean =>
  selected !== null && choice.draft.picks.some((pick) => `hip-${pick.hip}` === selected.id);

function ProposalAnswers({ lab }: { lab: PairLabModel }) {
  return lab.proposalHip === null ? (
    <Button className={wide} onClick={lab.proposeAgain}>
      Start again with the first
    </Button>
  ) : (
    <div className="flex gap-2">
      <Button variant="primary" size="large" className="flex-1" onClick={lab.keepProposal}>
        This one will do
      </Button>
      <Button size="large" className="flex-1" onClick={lab.anotherStar}>
        Another star
      </Button>
    </div>
  );
}

function LookAlikeAnswers({ lab, hip }: { lab: PairLabModel; hip: number }) {
  const { selected } = lab;
  const neighbour = selected !== null && selected.id !== `hip-${String(hip)}` ? selected : null;
  return (
    <div className="flex gap-2">
      {neighbour === null ? null : (
        <Button
          variant="primary"
          size="large"
          className="flex-1"
          onClick={() => {
            lab.answer(hip, neighbour.id);
          }}
        >
          This could be mistaken for it
        </Button>
      )}
      <Button
        size="large"
        className="flex-1"
        onClick={() => {
          lab.answer(hip, null);
        }}
      >
        Nothing near it
      </Button>
    </div>
  );
}
