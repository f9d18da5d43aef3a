'use client';

import { JudgeButtons } from './judge-buttons';
import { judgingQuestion } from './run-words';

/** What ends the run, always in reach: below the panel, however long that grows. */
export function JudgeControl({ onJudge }: { onJudge: (trust: boolean) => void }) {
  return (
    <section
      aria-label="Judgement"
      className="space-y-2 border-t-2 border-strong bg-panel px-3 py-2.5 select-none lg:border-s-2 lg:px-5 lg:py-4"
    >
      <p className="font-semibold">{judgingQuestion}</p>
      <div className="grid grid-cols-2 gap-2">
        <JudgeButtons onJudge={onJudge} className="px-2" />
      </div>
    </section>
  );
}
