'use client';

import type { ReactNode } from 'react';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import type { AskState } from './look-asker';

type AskButtonProps = {
  /** Undefined while it has not been asked for. */
  asked: AskState | undefined;
  label: string;
  /** Of the same button where no answer came. */
  againLabel: string;
  onAsk: () => void;
  children: ReactNode;
};

/** Asks for one piece of evidence, and once more where the connection was lost. */
export function AskButton({ asked, label, againLabel, onAsk, children }: AskButtonProps) {
  const again = asked?.state === 'no-answer';
  return (
    <Button
      busy={asked?.state === 'waiting'}
      aria-label={again ? againLabel : label}
      onClick={onAsk}
    >
      {again ? 'Try again' : children}
    </Button>
  );
}

/** Why what was asked for is not here. */
export function AskNotice({ asked }: { asked: AskState | undefined }) {
  if (asked?.state === 'no-answer')
    return (
      <Notice tone="caution" title="No connection" live="alert" className="basis-full">
        No answer came. Try again when the connection is back: it is counted once, however often you
        ask.
      </Notice>
    );
  if (asked?.state === 'refused')
    return (
      <Notice tone="danger" title="That cannot be shown" live="alert" className="basis-full">
        {asked.message}
      </Notice>
    );
  return null;
}
