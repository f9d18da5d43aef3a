'use client';

import { useSyncExternalStore } from 'react';

const noSubscription = (): (() => void) => () => undefined;

/** False on the server and while its page comes alive, true from then on. */
export const useInBrowser = (): boolean =>
  useSyncExternalStore(
    noSubscription,
    () => true,
    () => false,
  );
