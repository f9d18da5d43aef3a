'use client';

import { useEffect, useState } from 'react';
import { routes } from '@/lib/routes';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { decodeCatalogue } from '@/lib/sky/catalogue';

/** One download a page, however many ask; the browser's cache keeps it for the next page. */
const downloads = new Map<string, Promise<StarCatalogue>>();

async function download(version: string): Promise<StarCatalogue> {
  const answer = await fetch(routes.skyCatalogue(version));
  if (!answer.ok) throw new Error(`the star catalogue answered ${answer.status}`);
  const json: unknown = await answer.json();
  return decodeCatalogue(json);
}

function catalogueOf(version: string): Promise<StarCatalogue> {
  const known = downloads.get(version);
  if (known !== undefined) return known;
  const started = download(version);
  downloads.set(version, started);
  started.catch(() => {
    // A failed download must not stand in the way of the next try.
    downloads.delete(version);
  });
  return started;
}

export type CatalogueState =
  | { state: 'loading' }
  | { state: 'ready'; catalogue: StarCatalogue }
  | { state: 'failed'; retry: () => void };

/** The star catalogue of a version, fetched once. */
export function useCatalogue(version: string): CatalogueState {
  const [round, setRound] = useState(0);
  const [answer, setAnswer] = useState<{ key: string; catalogue: StarCatalogue | null } | null>(
    null,
  );
  const key = `${version} ${round}`;
  useEffect(() => {
    let wanted = true;
    catalogueOf(version).then(
      (catalogue) => {
        if (wanted) setAnswer({ key, catalogue });
      },
      () => {
        if (wanted) setAnswer({ key, catalogue: null });
      },
    );
    return () => {
      wanted = false;
    };
  }, [version, key]);
  if (answer?.key !== key) return { state: 'loading' };
  if (answer.catalogue !== null) return { state: 'ready', catalogue: answer.catalogue };
  return {
    state: 'failed',
    retry: () => {
      setRound(round + 1);
    },
  };
}
