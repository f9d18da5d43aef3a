'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useState, type ReactNode } from 'react';
import { Button } from '@/components/ui/button';
import { isOlderThanSaved } from './saved-here';

/**
 * Shows the lab once the page has the newest work. The browser's Back and Forward bring a page up as
 * it was first made, without what was saved from it: it is asked for anew, and the lab waits.
 */
export function NewestWork({
  title,
  attemptKey,
  nextSequence,
  children,
}: {
  title: string;
  attemptKey: string;
  nextSequence: number;
  children: ReactNode;
}) {
  const router = useRouter();
  // Once the lab stands it stays: what is saved from it makes it no older.
  const [stands, setStands] = useState(false);
  const older = !stands && isOlderThanSaved(attemptKey, nextSequence);
  if (!stands && !older) setStands(true);

  useEffect(() => {
    if (!older) return;
    const ask = (): void => {
      router.refresh();
    };
    if (navigator.onLine) ask();
    window.addEventListener('online', ask);
    return () => {
      window.removeEventListener('online', ask);
    };
    // A save that was still on its way may have overtaken the answer: then it is asked once more.
  }, [older, nextSequence, router]);

  if (!older) return children;
  return (
    <div className="grid min-h-[26rem] place-items-center p-6">
      <h1 className="sr-only">{title}</h1>
      <div className="space-y-4 text-center">
        <p role="status">Fetching your work …</p>
        <Button
          variant="quiet"
          onClick={() => {
            window.location.reload();
          }}
        >
          Load the page again
        </Button>
      </div>
    </div>
  );
}
