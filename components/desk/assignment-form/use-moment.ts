'use client';

import { useRef, useState } from 'react';
import type { MomentAnswer, MomentQuestion } from './form-actions';

const pauseMs = 300;

/**
 * Asks the server about a wall-clock time shortly after it was last changed. A later question
 * overtakes an earlier one; an incomplete time asks nothing.
 */
export function useMoment(
  lookUp: (question: MomentQuestion) => Promise<MomentAnswer>,
  /** What is known of the time that the form opens with. */
  first: MomentAnswer | null = null,
): readonly [MomentAnswer | null, (question: MomentQuestion | null) => void] {
  const [answer, setAnswer] = useState(first);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const latest = useRef(0);

  function ask(question: MomentQuestion | null): void {
    clearTimeout(timer.current);
    const number = (latest.current += 1);
    if (question === null) {
      setAnswer(null);
      return;
    }
    timer.current = setTimeout(() => {
      lookUp(question).then(
        (found) => {
          if (number === latest.current) setAnswer(found);
        },
        () => {
          // The server checks again when the form is saved; being offline here is no error of the teacher's.
          if (number === latest.current) setAnswer(null);
        },
      );
    }, pauseMs);
  }
  return [answer, ask];
}
