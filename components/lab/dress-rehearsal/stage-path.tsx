'use client';

import { Check, ChevronDown, ChevronUp } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { rehearsalStages, type RehearsalStage } from '@/lib/rehearsal/stages';
import { stageWords } from './stage-words';

type StagePathProps = {
  at: RehearsalStage;
  /** Whether the learner has come here from another stage: the focus comes along. */
  arrived: boolean;
  isDone: (stage: RehearsalStage) => boolean;
  onGo: (stage: RehearsalStage) => void;
};

/** The evening's way through its stages; any of them can be gone to, back and forth, as outdoors. */
export function StagePath({ at, arrived, isDone, onGo }: StagePathProps) {
  const [open, setOpen] = useState(false);
  const fold = useRef<HTMLButtonElement>(null);
  const current = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (!arrived) return;
    // Where the line is folded to one button, that one says where one is.
    if (fold.current?.offsetParent) fold.current.focus();
    else current.current?.focus();
  }, [at, arrived]);
  const number = rehearsalStages.indexOf(at) + 1;
  const Chevron = open ? ChevronUp : ChevronDown;
  return (
    <nav aria-label="Stages of the evening" className="border-b border-line bg-panel">
      <button
        ref={fold}
        type="button"
        aria-expanded={open}
        aria-controls="evening-stages"
        onClick={() => {
          setOpen(!open);
        }}
        className="flex min-h-11 w-full items-center justify-between gap-3 px-4 text-start font-semibold lg:hidden"
      >
        {`${String(number)} of ${String(rehearsalStages.length)}: ${stageWords[at].title}`}
        <Chevron aria-hidden="true" className="size-5 shrink-0" />
      </button>
      <ol
        id="evening-stages"
        className={`max-h-[45dvh] grid-cols-2 overflow-y-auto px-1 lg:flex lg:max-h-none lg:overflow-visible ${open ? 'grid' : 'hidden'}`}
      >
        {rehearsalStages.map((stage, index) => (
          <li key={stage} className="flex lg:flex-auto">
            <button
              ref={stage === at ? current : undefined}
              type="button"
              aria-current={stage === at ? 'step' : undefined}
              onClick={() => {
                setOpen(false);
                onGo(stage);
              }}
              className="flex min-h-11 w-full items-center gap-1 border-b-4 border-transparent px-2 text-sm whitespace-nowrap text-soft hover:text-ink aria-[current]:border-accent aria-[current]:font-semibold aria-[current]:text-ink lg:justify-center lg:px-1"
            >
              {isDone(stage) ? (
                <Check aria-hidden="true" className="size-4 shrink-0 text-good" />
              ) : (
                <span aria-hidden="true" className="tabular-nums">
                  {index + 1}
                </span>
              )}
              {stageWords[stage].short}
              <span className="sr-only">{isDone(stage) ? ', done' : ', not done yet'}</span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
