'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import type { ImportOutcome } from '@/lib/data/roster-import';
import { changeSaid } from './change-text';

/** What was done, and the way to take it back while nobody new has worked. */
export function ImportDone({
  outcome,
  busy,
  onTakeBack,
  onMore,
}: {
  outcome: ImportOutcome;
  busy: boolean;
  onTakeBack: () => void;
  onMore: () => void;
}) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.focus();
  }, [outcome]);
  return (
    <div ref={box} tabIndex={-1}>
      <Notice tone="good" live="status" title={changeSaid(outcome.counts)}>
        <p>
          {outcome.counts.add > 0
            ? 'New cards are made under “Sign-in cards” on the Print page. '
            : ''}
          As long as none of the new students has worked, all of it can be taken back from here.
        </p>
        <div className="flex flex-wrap gap-2">
          <Button onClick={onMore}>Done</Button>
          <Button busy={busy} onClick={onTakeBack}>
            Take the import back
          </Button>
        </div>
      </Notice>
    </div>
  );
}
