'use client';

import { useState, useSyncExternalStore } from 'react';
import { Button } from '@/components/ui/button';
import { Panel } from '@/components/ui/panel';
import type { SignOffSheet } from '@/lib/mastery/sign-off-sheet';
import { removeWorker, setUpWorker } from './set-up-worker';
import { forgetSheets, keepSheet, keptSheet, noonTomorrow, type Owner } from './kept-on-device';

const nothingChanges = () => () => undefined;
const untilText = (until: Date): string =>
  new Intl.DateTimeFormat('en-GB', { weekday: 'long', hour: '2-digit', minute: '2-digit' }).format(
    until,
  );

/** Asked once an evening: whether this phone may keep the class, as far as it is needed outside. */
export function TakeOutside({ sheet, owner }: { sheet: SignOffSheet; owner: Owner }) {
  const secure = useSyncExternalStore(
    nothingChanges,
    () => window.isSecureContext && 'serviceWorker' in navigator,
    () => null,
  );
  const alive = secure !== null;
  const [changed, setChanged] = useState<'kept' | 'forgotten' | 'failed' | null>(null);
  const [busy, setBusy] = useState(false);
  if (!alive) return null;
  const kept = keptSheet(owner, new Date());
  if (!secure) {
    return (
      <Panel title="Outside, without a connection">
        <p className="max-w-measure">
          Leave this page open; it works without a connection while it stays open. What you note
          waits on this device and is sent when the connection is back.
        </p>
      </Panel>
    );
  }
  return (
    <Panel title="Take this class outside">
      <div className="max-w-measure space-y-3">
        <p aria-live="polite">
          {kept === null
            ? 'Keep this class on this device until noon tomorrow? Then this page opens without a connection, too. Kept are names, groups, and the levels and gates noted so far, not the words beside them. It is cleared at noon or, if no page is open then, when the desk is next opened here; when you sign out; and when another teacher signs in here. A session that runs out by itself clears nothing.'
            : `Kept on this device until ${untilText(kept.until)}: this page opens without a connection. Clear it when the device changes hands.`}
        </p>
        {changed === 'failed' ? (
          <p className="font-semibold text-caution" role="alert">
            It could not be kept. Leave this page open; it works without a connection while it stays
            open.
          </p>
        ) : null}
        {kept === null ? (
          <Button
            className="min-h-11"
            busy={busy}
            onClick={() => {
              setBusy(true);
              void setUpWorker(sheet.classId).then((works) => {
                const there = works && keepSheet(owner, sheet, noonTomorrow(new Date()));
                setChanged(there ? 'kept' : 'failed');
                setBusy(false);
              });
            }}
          >
            Keep it until noon tomorrow
          </Button>
        ) : (
          <Button
            className="min-h-11"
            onClick={() => {
              if (forgetSheets()) void removeWorker();
              setChanged('forgotten');
            }}
          >
            Clear it from this phone
          </Button>
        )}
      </div>
    </Panel>
  );
}
