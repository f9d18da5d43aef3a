'use client';

import { BenchReview } from '../bench/bench-review';
import { SendingBox } from '../shell/sending-box';
import type { SendState } from '../shell/submission-sender';
import { dressRehearsalReview } from './dress-rehearsal-review';
import type { Evening } from './evening';

type EveningReviewProps = {
  evening: Evening;
  sent: SendState<unknown>;
  onBack: () => void;
  onSend: () => void;
};

/** The whole evening, stage by stage, read once more before it is sent. */
export function EveningReview({ evening, sent, onBack, onSend }: EveningReviewProps) {
  const { draft, variant, mode } = evening;
  return (
    <div className="mx-auto w-full max-w-[44rem] px-4 py-8 sm:px-6">
      <h1 className="mb-4 text-2xl font-[560]">The evening, stage by stage</h1>
      <BenchReview mode={mode} lines={dressRehearsalReview(draft, variant)} onBack={onBack}>
        <SendingBox state={sent} mode={mode} practiceLabel="Show how it came out" onSend={onSend} />
      </BenchReview>
    </div>
  );
}
