'use client';

import { useEffect } from 'react';
import { usePathname } from 'next/navigation';
import {
  countWaiting,
  forgetOldSheets,
  forgetSheets,
  forgetSheetsOfOthers,
  waitingOf,
} from './kept-on-device';
import { removeWorker } from './set-up-worker';
import { WaitingHere } from './waiting-here';

/** The shell's form that signs out. */
const signOutForm = 'form[data-sign-out]';
const minuteMs = 60_000;

const unsavedQuestion =
  'Levels that you typed in from paper are not saved, and are lost. Sign out all the same?';
const questionOf = (waiting: number): string =>
  `${waiting === 1 ? '1 note from the telescope has' : `${String(waiting)} notes from the telescope have`} not been sent yet. They stay on this device, without names but with any word that you wrote beside a level, and are sent when you sign in here again and open the sign-off page. Sign out all the same?`;

/**
 * On every page of the desk: clears class lists that are past their time or another teacher's, says what
 * waits here of other classes, and at signing out what has not been sent yet. The notes hold no names and
 * stay; the lists go.
 */
export function SignOffGuard({ teacherId }: { teacherId: string }) {
  const path = usePathname();
  useEffect(() => {
    const clear = () => {
      const others = forgetSheetsOfOthers(teacherId);
      if (forgetOldSheets(new Date()) || others) void removeWorker();
    };
    clear();
    // A page that stays open over noon clears as well as one that is opened after it.
    const timer = setInterval(clear, minuteMs);
    const leaving = (event: SubmitEvent) => {
      if (!(event.target instanceof Element) || !event.target.matches(signOutForm)) return;
      const waiting = countWaiting(teacherId);
      const unsaved = document.querySelector('[data-unsaved]') !== null;
      const stays =
        (unsaved && !window.confirm(unsavedQuestion)) ||
        (waiting > 0 && !window.confirm(questionOf(waiting)));
      if (stays) {
        event.preventDefault();
        event.stopPropagation();
        return;
      }
      if (forgetSheets()) void removeWorker();
    };
    // Before the form's own action hears of it.
    document.addEventListener('submit', leaving, { capture: true });
    return () => {
      clearInterval(timer);
      document.removeEventListener('submit', leaving, { capture: true });
    };
  }, [teacherId]);
  return <WaitingHere queues={() => waitingOf(teacherId)} path={path} />;
}
