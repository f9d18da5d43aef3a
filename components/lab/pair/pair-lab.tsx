'use client';

import type { ReactNode } from 'react';
import { useCatalogue } from '@/components/sky/use-catalogue';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import type { PairDraft } from '@/lib/grading/pair-submission';
import type { SaveDraft } from './draft-saver';
import type { PairLabSky } from './pair-lab-sky';
import { PairWorkbench } from './pair-workbench';
import type { SubmitPair } from './submission-sender';

export type PairLabProps = {
  sky: PairLabSky;
  mode: 'practice' | 'check';
  /** Tells this attempt from others in the tab's storage: the attempt's id, or the round's address. */
  attemptKey: string;
  draft: PairDraft;
  /** The number the next saved draft carries. */
  nextSequence?: number;
  /** Left out where nothing is kept, as for a visitor. */
  onSave?: SaveDraft;
  onSubmit: SubmitPair;
  /** How many of the three hints are offered; fewer as mastery grows. Practice only. */
  hintLevels?: number;
  /** In a practice for whom the figures have faded. */
  figuresOffered?: boolean;
  /** "Attempt 2 of 3 · due Friday" or the like, above the task. */
  about?: ReactNode;
  /** What stands below the result: another round, back to one's work. */
  afterwards?: ReactNode;
  /** What is said after sending when the result is withheld. */
  withheldText?: string;
};

/** "Pick the pair": the sky, the task beside it, and the same task as a table. */
export function PairLab(props: PairLabProps) {
  const answer = useCatalogue(props.sky.catalogueVersion);
  if (answer.state === 'ready') return <PairWorkbench {...props} catalogue={answer.catalogue} />;
  return (
    <div className="on-sky grid h-[calc(100dvh-7rem)] min-h-[26rem] place-items-center p-6">
      {answer.state === 'loading' ? (
        <p role="status">The stars are being fetched …</p>
      ) : (
        <Notice tone="danger" title="The stars did not arrive" live="alert">
          <p>The star catalogue could not be fetched. Check the connection, then try again.</p>
          <Button onClick={answer.retry}>Try again</Button>
        </Notice>
      )}
    </div>
  );
}
