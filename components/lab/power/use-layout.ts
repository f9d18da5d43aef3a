'use client';

import { useSyncExternalStore } from 'react';
import { tallLayout, wideLayout, type BenchLayout } from './bench-layout';

/** Where the panel stands beside the scene; as in LabFrame. */
const wide = '(min-width: 64rem)';

function subscribe(onChange: () => void): () => void {
  const list = window.matchMedia(wide);
  list.addEventListener('change', onChange);
  return () => {
    list.removeEventListener('change', onChange);
  };
}

/** The bench as it fits this screen. */
export const useLayout = (): BenchLayout =>
  useSyncExternalStore(
    subscribe,
    () => (window.matchMedia(wide).matches ? wideLayout : tallLayout),
    () => wideLayout,
  );
