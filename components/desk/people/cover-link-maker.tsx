'use client';

import { useState, useTransition } from 'react';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import { StatusLine } from '@/components/ui/status-line';
import type { Result } from '@/lib/data/result';
import { CopyLink } from '../copy-link';

/** Makes a cover link: shown this once. */
export function CoverLinkMaker({
  make,
}: {
  make: () => Promise<Result<{ path: string; until: string }>>;
}) {
  const [made, setMade] = useState<{ path: string; until: string } | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [busy, start] = useTransition();

  function makeOne(): void {
    start(async () => {
      try {
        const answer = await make();
        setProblem(answer.ok ? null : answer.problem.message);
        setMade(answer.ok ? answer.value : null);
      } catch {
        setProblem('The server did not answer. Try again.');
      }
    });
  }

  return (
    <div className="space-y-4">
      <div className="flex flex-wrap items-center gap-3">
        <Button busy={busy} onClick={makeOne}>
          Make a cover link for today
        </Button>
        <StatusLine>{busy ? 'Making…' : ''}</StatusLine>
      </div>
      {problem === null ? null : <Notice tone="danger" live="alert" title={problem} />}
      {made === null ? null : (
        <Notice tone="caution" live="status" title="Shown this once: copy it now">
          <p>
            Whoever has it sees this class until {made.until}. Give it to your substitute in person
            or by a message that only they read, and not to students.
          </p>
          <CopyLink label="Cover link" path={made.path} />
        </Notice>
      )}
    </div>
  );
}
