'use client';

import type { RefObject } from 'react';
import { useEffect, useRef } from 'react';

/**
 * A step often ends with a press on a button that goes away with it, and the focus with the button.
 * It then goes to the new step's heading; on a phone, where the panel is folded, to what unfolds it.
 * A focus that somebody has put elsewhere stays there.
 */
export function useStepHeading(step: string): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null);
  const before = useRef(step);
  useEffect(() => {
    if (before.current === step) return;
    before.current = step;
    // The new step is read from its beginning.
    const sheet = heading.current?.closest('#lab-sheet');
    if (sheet) sheet.scrollTop = 0;
    const { activeElement, body } = document;
    if (activeElement !== null && activeElement !== body) return;
    heading.current?.focus({ preventScroll: true });
    if (document.activeElement !== body) return;
    heading.current?.closest('aside')?.querySelector('button')?.focus({ preventScroll: true });
  }, [step]);
  return heading;
}
