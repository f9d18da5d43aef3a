'use client';

import { useEffect, useState, useSyncExternalStore } from 'react';
import { themeCookieName, themeFromText } from '@/components/ui/theme';
import { routes } from '@/lib/routes';
import { anyKeptSheet, forgetOldSheets, type KeptSheet } from './kept-on-device';
import { removeWorker } from './set-up-worker';
import { SignOffBoard } from './sign-off-board';

/** The class of the sign-off page whose place this takes: the address in the window is that page's. */
const classInAddress = (): string =>
  /^\/desk\/classes\/([^/]+)\/sign-off$/.exec(window.location.pathname)?.[1] ?? '';

const nothingChanges = () => () => undefined;

/** The sign-off page from what this device was asked to keep; the look comes from the cookie, too. */
export function OutsideSheet() {
  const alive = useSyncExternalStore(
    nothingChanges,
    () => true,
    () => false,
  );
  useEffect(() => {
    if (forgetOldSheets(new Date())) void removeWorker();
    const cookie = new RegExp(`(?:^|; )${themeCookieName}=([^;]*)`).exec(document.cookie)?.[1];
    const theme = themeFromText(cookie);
    if (theme !== null) document.documentElement.dataset.theme = theme;
  }, []);
  return alive ? <FromDevice /> : <h1 className="text-2xl font-semibold">Sign-off</h1>;
}

function FromDevice() {
  const [kept] = useState<KeptSheet | null>(() => anyKeptSheet(classInAddress(), new Date()));
  const teacherId = kept?.sheet.teacherId ?? null;
  if (kept === null || teacherId === null) {
    return (
      <div className="max-w-measure space-y-3">
        <h1 className="text-2xl font-semibold">No connection</h1>
        <p>
          No class is kept on this device now. What was noted and not yet sent is still here; it is
          sent when there is a connection and the sign-off page of the class is open.
        </p>
        <p>
          <a className="link inline-flex min-h-11 items-center" href={routes.teacher.desk()}>
            Try the desk
          </a>
        </p>
      </div>
    );
  }
  const group = new URLSearchParams(window.location.search).get('group') ?? '';
  return (
    <div className="space-y-3">
      <header>
        <h1 className="text-2xl font-semibold">{kept.sheet.className}</h1>
        <p className="text-soft">
          Sign-off, from this device: no connection when the page was opened.{' '}
          {/* A whole load, not a step within the page: it asks whether the server is there again. */}
          <a
            className="link inline-flex min-h-11 items-center"
            href={routes.teacher.classSignOff(kept.sheet.classId)}
          >
            Try the connection
          </a>
        </p>
      </header>
      <SignOffBoard
        sheet={kept.sheet}
        teacherId={teacherId}
        group={group}
        today={new Date().toISOString()}
      />
    </div>
  );
}
