'use client';

import { useState, useSyncExternalStore } from 'react';
import { Button } from '@/components/ui/button';
import { StatusLine } from '@/components/ui/status-line';
import { TextInput } from '@/components/ui/text-input';

/** A link that is shown once, to be copied by button or by hand. */
export function CopyLink({ label, path }: { label: string; path: string }) {
  const [said, setSaid] = useState('');
  const origin = useSyncExternalStore(
    () => () => undefined,
    () => window.location.origin,
    () => '',
  );
  const link = `${origin}${path}`;

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(link);
      setSaid('Copied.');
    } catch {
      // Browsers forbid it on pages without https; the link can still be marked and copied by hand.
      setSaid('Copying is not allowed here: mark the link and copy it.');
    }
  }

  return (
    <div className="space-y-2">
      <TextInput
        aria-label={label}
        readOnly
        value={link}
        className="font-figures text-sm"
        onFocus={(event) => event.target.select()}
      />
      <div className="flex flex-wrap items-center gap-3">
        <Button onClick={() => void copy()}>Copy the link</Button>
        <StatusLine>{said}</StatusLine>
      </div>
    </div>
  );
}
