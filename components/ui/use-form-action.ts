'use client';

import { useActionState, useState } from 'react';

/** What stands in the way, in words; `field` names the input it belongs to. */
type Problem = { code: string; message: string; field?: string };

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
    return {
      problem: {
        code: 'no-connection',
        message: 'Not saved: no connection to the server. Try again.',
      },
      said: null,
      kept: textsOf(formData),
    };
  }
}

function textsOf(formData: FormData): Readonly<Record<string, string>> {
  const texts: Record<string, string> = {};
  for (const [name, value] of formData)
    if (typeof value === 'string' && !name.startsWith('$')) texts[name] = value;
  return texts;
}

/**
 * The same for a form whose answer is of a kind of its own, such as a sign-in: where the server cannot be
 * reached, `problem` says so, and `typed` has all that was typed, passwords too. That stays in this page.
 */
export function useReachingAction<Answer extends { problem: Problem | string | null }>(
  action: (before: Awaited<Answer>, formData: FormData) => Promise<Answer>,
  start: Awaited<Answer>,
): {
  answer: Awaited<Answer>;
  problem: Awaited<Answer>['problem'] | Problem;
  typed: Readonly<Record<string, string>>;
  send: (formData: FormData) => void;
} {
  const [typed, setTyped] = useState<Readonly<Record<string, string>> | null>(null);
  const [answer, send] = useActionState<Answer, FormData>(
    typeof window === 'undefined'
      ? action
      : async (before, formData) => {
          try {
            const next = await action(before, formData);
            setTyped(null);
            return next;
          } catch (error) {
            if (!isUnreached(error)) throw error;
            setTyped(textsOf(formData));
            return before;
          }
        },
    start,
  );
  if (typed === null) return { answer, problem: answer.problem, typed: {}, send };
  const problem = {
    code: 'no-connection',
    message: 'No connection to the server. What you typed is still here: try again.',
  };
  return { answer, problem, typed, send };
}

/**
 * A request that got no answer is a TypeError, by the Fetch standard; what broke on the server, or leads
 * to another page, carries a digest.
 */
const isUnreached = (error: unknown): boolean => error instanceof TypeError && !('digest' in error);
