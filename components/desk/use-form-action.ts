'use client';

import { useActionState, useState } from 'react';
import type { Problem } from '@/lib/data/result';

/** What a small form's action answers: a problem with what was typed, or a sentence on what was done. */
export type FormAnswer = {
  problem: Problem | null;
  said: string | null;
  kept: Readonly<Record<string, string>>;
};
export type FormActionFunction = (before: FormAnswer, formData: FormData) => Promise<FormAnswer>;

const untouched: FormAnswer = { problem: null, said: null, kept: {} };

/**
 * A form's action whose answer is always a value: where the server cannot be reached, what was typed stays
 * and the form says so. `problem` and `said` speak, and `onAnswer` is called, as soon as the server has
 * answered; `kept` changes once the page shows what the server made of it.
 */
export function useFormAction(
  action: FormActionFunction,
  onAnswer: (answer: FormAnswer) => void = () => undefined,
): FormAnswer & { send: (formData: FormData) => void } {
  const [early, setEarly] = useState<FormAnswer | null>(null);
  const [answer, send, pending] = useActionState<FormAnswer, FormData>(
    // On the server the action itself: only that makes a form that also works before the scripts are there.
    typeof window === 'undefined'
      ? action
      : async (before, formData) => {
          const next = await orUnreached(() => action(before, formData), formData);
          setEarly(next);
          onAnswer(next);
          return next;
        },
    untouched,
  );
  const answered = early !== answer;
  const { problem, said } = pending && answered ? (early ?? answer) : answer;
  // What was said to an earlier sending is not said of one that is on its way.
  return { problem, said: pending && !answered ? null : said, kept: answer.kept, send };
}

async function orUnreached(
  send: () => Promise<FormAnswer>,
  formData: FormData,
): Promise<FormAnswer> {
  try {
    return await send();
  } catch (error) {
    if (!isUnreached(error)) throw error;
    const kept: Record<string, string> = {};
    for (const [name, value] of formData)
      if (typeof value === 'string' && !name.startsWith('$')) kept[name] = value;
    return {
      problem: {
        code: 'no-connection',
        message: 'Not saved: no connection to the server. Try again.',
      },
      said: null,
      kept,
    };
  }
}

/**
 * A request that got no answer is a TypeError, by the Fetch standard; what broke on the server, or leads
 * to another page, carries a digest.
 */
const isUnreached = (error: unknown): boolean => error instanceof TypeError && !('digest' in error);
