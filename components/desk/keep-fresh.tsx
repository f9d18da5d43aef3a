'use client';

import { RotateCw } from 'lucide-react';
import { useRouter } from 'next/navigation';
import { useEffect, useState, useTransition } from 'react';
import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';

const everyMs = 20_000;

/** Reads the page anew while a class is at work, until the teacher switches it off (2.2.2). */
export function KeepFresh() {
  const router = useRouter();
  const [on, setOn] = useState(true);
  const [reading, startReading] = useTransition();

  useEffect(() => {
    if (!on) return;
    const timer = setInterval(() => {
      // A page that nobody looks at asks nothing.
      if (document.visibilityState === 'visible') startReading(() => router.refresh());
    }, everyMs);
    return () => clearInterval(timer);
  }, [on, router]);

  return (
    <div className="no-print flex flex-wrap items-center gap-x-5 gap-y-2 text-sm">
      <Checkbox
        label="Keep up to date, every 20 seconds"
        checked={on}
        onChange={(event) => setOn(event.target.checked)}
      />
      <Button variant="plain" busy={reading} onClick={() => startReading(() => router.refresh())}>
        <RotateCw aria-hidden="true" className="size-4" />
        Now
      </Button>
    </div>
  );
}
