'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import type { SendState } from './submission-sender';

type SendingBoxProps = {
  state: SendState<unknown>;
  mode: 'practice' | 'check';
  /** What the button says in practice, where nothing is handed in. */
  practiceLabel: string;
  onSend: () => void;
};

/** The button that sends the answer, and what became of it. */
export function SendingBox({ state, mode, practiceLabel, onSend }: SendingBoxProps) {
  const sending = state.state === 'sending';
  const failed = state.state === 'no-answer' || state.state === 'refused';
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // What came of pressing the button must not stay below the panel's edge.
    if (failed) box.current?.scrollIntoView({ block: 'nearest' });
  }, [failed]);
  return (
    <div ref={box} className="space-y-3">
      <Button variant="primary" size="large" className="w-full" busy={sending} onClick={onSend}>
        {state.state === 'no-answer' ? 'Send again' : mode === 'check' ? 'Submit' : practiceLabel}
      </Button>
      {state.state === 'no-answer' ? (
        <Notice tone="caution" title="No connection" live="alert">
          Your answer is kept on this device. Send it again when the connection is back: it counts
          once.
        </Notice>
      ) : null}
      {state.state === 'refused' ? (
        <Notice tone="danger" title="That was not taken" live="alert">
          {state.message}
        </Notice>
      ) : null}
    </div>
  );
}
