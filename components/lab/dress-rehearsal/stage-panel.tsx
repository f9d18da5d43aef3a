'use client';

import { Redo2, RotateCcw, Undo2 } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button } from '@/components/ui/button';
import { rehearsalStages, type RehearsalStage } from '@/lib/rehearsal/stages';
import { HintBox } from '../shell/hint-box';
import type { Evening } from './evening';
import { stageWords } from './stage-words';
import { stillToDo } from './stages-done';

type StagePanelProps = {
  evening: Evening;
  stage: RehearsalStage;
  children: ReactNode;
  /** The way back, where a stage has one. */
  steps?: {
    canUndo: boolean;
    canRedo: boolean;
    undo: () => void;
    redo: () => void;
    onStartAfresh: () => void;
  };
  hints: readonly string[];
};

/** A stage's task and controls, what is still to do in it, and the way on. */
export function StagePanel({ evening, stage, children, steps, hints }: StagePanelProps) {
  const offered = hints.slice(0, evening.hintLevels);
  return (
    <div className="space-y-4">
      <h2 className="text-lg leading-snug font-semibold">{stageWords[stage].title}</h2>
      {children}
      <GoOn evening={evening} stage={stage} />
      {steps === undefined ? null : (
        <div className="flex flex-wrap gap-2 border-t border-line pt-3">
          <Button aria-disabled={!steps.canUndo} onClick={steps.undo}>
            <Undo2 aria-hidden="true" className="size-4" /> Undo
          </Button>
          <Button aria-disabled={!steps.canRedo} onClick={steps.redo}>
            <Redo2 aria-hidden="true" className="size-4" /> Redo
          </Button>
          <Button aria-disabled={!steps.canUndo} onClick={steps.onStartAfresh}>
            <RotateCcw aria-hidden="true" className="size-4" /> Start afresh
          </Button>
        </div>
      )}
      {offered.length === 0 ? null : <HintBox hints={offered} step={stage + offered.join(' ')} />}
    </div>
  );
}

/** To the next stage, finished or not: outdoors nobody stands in the way either. */
function GoOn({ evening, stage }: Pick<StagePanelProps, 'evening' | 'stage'>) {
  const missing = stillToDo(evening.draft, evening.variant, stage);
  const next = rehearsalStages[rehearsalStages.indexOf(stage) + 1];
  if (next === undefined) return null;
  return (
    <div className="space-y-2">
      {missing === '' ? null : (
        <p className="border-s-4 border-line ps-3 text-sm text-soft">
          Still to do here: {missing} You can go on and come back.
        </p>
      )}
      <Button
        variant={missing === '' ? 'primary' : 'quiet'}
        size="large"
        className="w-full"
        onClick={() => {
          evening.goTo(next);
        }}
      >
        Go on: {stageWords[next].title}
      </Button>
    </div>
  );
}
