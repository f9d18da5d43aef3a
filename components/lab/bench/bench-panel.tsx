'use client';

import type { ReactNode } from 'react';
import { Redo2, RotateCcw, Undo2 } from 'lucide-react';
import { Button } from '@/components/ui/button';
import { HintBox } from '../shell/hint-box';

type BenchPanelProps = {
  title: string;
  /** The lab's own part. */
  children: ReactNode;
  /** What is still to be done before the work can be handed in; empty when nothing is. */
  missing: string;
  onFinish: () => void;
  mode: 'practice' | 'check';
  hints: readonly string[];
  work: { canUndo: boolean; canRedo: boolean; undo: () => void; redo: () => void };
  onStartAfresh: () => void;
};

/** The task and its controls, the way to the end, and the way back. */
export function BenchPanel(props: BenchPanelProps) {
  const { work, missing } = props;
  return (
    <div className="space-y-4">
      <h2 className="text-lg leading-snug font-semibold">{props.title}</h2>
      {props.children}
      {missing === '' ? (
        <Button variant="primary" size="large" className="w-full" onClick={props.onFinish}>
          {props.mode === 'check' ? 'That is my work' : 'How did I do?'}
        </Button>
      ) : (
        <p className="border-s-4 border-line ps-3 text-sm text-soft">Still to do: {missing}</p>
      )}
      <div className="flex flex-wrap gap-2 border-t border-line pt-3">
        <Button aria-disabled={!work.canUndo} onClick={work.undo}>
          <Undo2 aria-hidden="true" className="size-4" /> Undo
        </Button>
        <Button aria-disabled={!work.canRedo} onClick={work.redo}>
          <Redo2 aria-hidden="true" className="size-4" /> Redo
        </Button>
        <Button aria-disabled={!work.canUndo} onClick={props.onStartAfresh}>
          <RotateCcw aria-hidden="true" className="size-4" /> Start afresh
        </Button>
      </div>
      {props.mode === 'practice' && props.hints.length > 0 ? (
        <HintBox hints={props.hints} step={props.hints.join(' ')} />
      ) : null}
    </div>
  );
}
