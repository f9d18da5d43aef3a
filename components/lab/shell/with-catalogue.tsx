'use client';

import type { ReactNode } from 'react';
import { useCatalogue } from '@/components/sky/use-catalogue';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import type { StarCatalogue } from '@/lib/sky/catalogue';

type WithCatalogueProps = {
  version: string;
  children: (catalogue: StarCatalogue) => ReactNode;
};

/** Fetches the stars first, and says how that goes. */
export function WithCatalogue({ version, children }: WithCatalogueProps) {
  const answer = useCatalogue(version);
  if (answer.state === 'ready') return children(answer.catalogue);
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
