'use client';

import { useCatalogue } from '@/components/sky/use-catalogue';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import type { PairLabProps } from './pair-lab-props';
import { PairWorkbench } from './pair-workbench';

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
