'use client';

import { useEffect } from 'react';
import { countWaiting, forgetOldSheets, forgetSheets } from './kept-on-device';

/** The shell's form that signs out. */
const signOutForm = 'form[data-sign-out]';

/**
 * On every page of the desk: clears class lists that are past their time, and at signing out says what has
 * not been sent yet. The notes hold no names and stay; the lists go.
 */
export function SignOffGuard({ teacherId }: { teacherId: string }) {
  useEffect(() => {
    forgetOldSheets(new Date());
    const leaving = (event: SubmitEvent) => {
      if (!(event.target instanceof Element) || !event.target.matches(signOutForm)) return;
      const waiting = countWaiting(teacherId);
      const question = `${waiting === 1 ? '1 note from the telescope has' : `${String(waiting)} notes from the telescope have`} not been sent yet. They stay on this device and are sent when you sign in here again and open the sign-off page. Sign out all the same?`;
      if (waiting > 0 && !window.confirm(question)) {
        event.preventDefault();
        event.stopPropagation();
        return;
      }
      forgetSheets();
    };
    // Before the form's own action hears of it.
    document.addEventListener('submit', leaving, { capture: true });
    return () => document.removeEventListener('submit', leaving, { capture: true });
  }, [teacherId]);
  return null;
}
