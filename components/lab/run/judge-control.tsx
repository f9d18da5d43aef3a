'use client';

import { Button } from '@/components/ui/button';
import { JudgeButtons } from './judge-buttons';
import type { RunModel } from './run-model';
import { judgingQuestion } from './run-words';

type JudgeControlProps = { model: RunModel; onJudge: (trust: boolean) => void };

/** What tells, and what ends the run: always in reach below the panel, however long that grows. */
export function JudgeControl({ model, onJudge }: JudgeControlProps) {
  const [third] = model.variant.thirdHips;
  return (
    <section
      aria-label="Judgement"
      className="space-y-2 border-t-2 border-strong bg-panel px-3 py-2.5 select-none lg:border-s-2 lg:px-5 lg:py-4"
    >
      {third === undefined ? null : (
        <Button
          size="large"
          className="w-full"
          onClick={() => {
            model.goTo(third);
          }}
        >
          Check on a third
        </Button>
      )}
      <p className="font-semibold">{judgingQuestion}</p>
      <div className="grid grid-cols-2 gap-2">
        <JudgeButtons onJudge={onJudge} className="px-2" />
      </div>
    </section>
  );
}
