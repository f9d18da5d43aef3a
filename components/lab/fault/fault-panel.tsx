'use client';

import type { ReactNode } from 'react';
import { Button } from '@/components/ui/button';
import { SunCaution } from '@/components/ui/sun-caution';
import type { FaultTemplate } from '@/lib/variants/fault-variant';
import { HintBox } from '../shell/hint-box';
import { faultHints } from './fault-hints';
import { FaultReview } from './fault-review';
import { NameTheCure, NameTheFault } from './fault-steps';
import type { FaultLabModel } from './use-fault-lab';

const begins: Readonly<Record<FaultTemplate, string>> = {
  'first-slews': 'The two first slews and what the alignment said lie open.',
  'after-the-alignment': 'The alignment was believed. How it went on lies open.',
  'one-slew': 'Only one slew is known so far.',
  'card-first': 'The settings card lies open. Where the tube landed has to be asked for.',
  bystander: 'Someone stood by and tells what they noticed.',
};

type FaultPanelProps = {
  lab: FaultLabModel;
  mode: 'practice' | 'check';
  hintLevels: number;
  /** The button that sends, and how sending goes. */
  sending: ReactNode;
};

/** The task and the one step that is next. */
export function FaultPanel({ lab, mode, hintLevels, sending }: FaultPanelProps) {
  const { choice, view, seen } = lab;
  return (
    <div className="space-y-4">
      <header className={choice.step === 'fault' ? undefined : 'hidden lg:block'}>
        <h2 className="text-lg leading-snug font-semibold">Find the fault</h2>
        <p className="mt-1 text-sm">
          Somebody set up this telescope and something is wrong. {begins[view.template]} Name the
          fault and what cures it.
        </p>
      </header>
      {choice.step === 'fault' ? <NameTheFault lab={lab} /> : null}
      {choice.step === 'cure' ? <NameTheCure lab={lab} /> : null}
      {choice.step === 'review' ? (
        <FaultReview lab={lab} mode={mode}>
          {sending}
        </FaultReview>
      ) : null}
      <div className="flex flex-wrap gap-2 border-t border-line pt-3 empty:hidden">
        {choice.step === 'cure' ? (
          <Button
            onClick={() => {
              lab.goTo('fault');
            }}
          >
            Back to the faults
          </Button>
        ) : null}
        {choice.past.length === 0 ? null : <Button onClick={lab.undo}>Undo</Button>}
      </div>
      {mode === 'practice' && hintLevels > 0 ? (
        <HintBox
          hints={faultHints(view, seen).slice(0, hintLevels)}
          step={`${choice.step} ${String(seen.length)}`}
        />
      ) : null}
      <SunCaution short />
    </div>
  );
}
