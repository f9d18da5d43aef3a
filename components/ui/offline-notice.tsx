'use client';

import { useSyncExternalStore } from 'react';
import { WifiOff } from 'lucide-react';

function listen(changed: () => void): () => void {
  window.addEventListener('online', changed);
  window.addEventListener('offline', changed);
  return () => {
    window.removeEventListener('online', changed);
    window.removeEventListener('offline', changed);
  };
}

/** Says when the connection is gone and what still works. Always mounted, so that it is read out. */
export function OfflineNotice() {
  const offline = useSyncExternalStore(
    listen,
    () => !navigator.onLine,
    () => false,
  );
  return (
    <div
      role="status"
      aria-live="polite"
      // Where a page says itself what waits, this would say it twice and less well.
      className="no-print sticky top-0 z-30 [body:has([data-keeps-working])_&]:hidden"
    >
      {offline ? (
        <p className="flex items-center justify-center gap-2 border-b-2 border-caution bg-caution-soft px-4 py-2 text-sm font-semibold text-caution">
          <WifiOff aria-hidden="true" className="size-4 shrink-0" />
          <span>
            No connection. In a lab go on: what you choose is kept here. Send your answer when the
            connection is back.
          </span>
        </p>
      ) : null}
    </div>
  );
}
