'use client';

import { useActionState, useEffect, useId, useRef } from 'react';
import { Button } from '@/components/ui/button';
import { inputLook } from '@/components/ui/input-look';
import { classNames } from '@/components/ui/class-names';
import type { CheckItemFace } from '@/lib/content/check-item';
import type { AnswerCheck, CheckState } from '@/lib/content/check-state';

const nothingYet: CheckState = { tries: 0, answer: '', feedback: null, refusal: null };

type CheckQuestionProps = {
  slug: string;
  item: CheckItemFace;
  /** Stands before the prompt: "Question 2". */
  label: string;
  answerCheck: AnswerCheck;
};

/** One question; the server marks it. Works without script too: the form then reloads the page. */
export function CheckQuestion({ slug, item, label, answerCheck }: CheckQuestionProps) {
  const [state, send, sending] = useActionState(answerCheck, nothingYet);
  const feedbackId = useId();
  const promptId = useId();
  const feedback = state.feedback;
  const missed = feedback !== null && feedback.verdict !== 'right' && feedback.answer === null;

  return (
    <form
      action={send}
      id={`question-${item.id}`}
      className="keep-together my-5 border-s-4 border-strong ps-4"
    >
      <input type="hidden" name="lesson" value={slug} />
      <input type="hidden" name="item" value={item.id} />
      {item.kind === 'choice' ? (
        <fieldset aria-describedby={feedbackId} className="min-w-0">
          <legend className="mb-1.5 font-semibold">
            <Label>{label}</Label>
            {item.prompt}
          </legend>
          {/* A new answer from the server resets the form: the key keeps the choice that was sent. */}
          <div key={state.tries} className="flex flex-col gap-0.5">
            {item.options.map((option) => (
              <label
                key={option.id}
                className="flex min-h-(--target) items-start gap-2.5 rounded-md px-1 py-1.5 hover:bg-sunken"
              >
                <input
                  type="radio"
                  name="answer"
                  value={option.id}
                  defaultChecked={state.answer === option.id}
                  className="radio-dot mt-[0.2em] size-5 shrink-0 appearance-none rounded-full border border-strong bg-panel"
                />
                <span>{option.text}</span>
              </label>
            ))}
          </div>
        </fieldset>
      ) : (
        <div>
          <label htmlFor={promptId} className="mb-1.5 block font-semibold">
            <Label>{label}</Label>
            {item.prompt}
          </label>
          <span className="flex items-center gap-2">
            <input
              key={state.tries}
              id={promptId}
              name="answer"
              // Some phones’ keypads for decimals have no minus sign; alike for all, so as not to tell it.
              inputMode="text"
              autoCapitalize="off"
              spellCheck={false}
              autoComplete="off"
              defaultValue={state.answer}
              aria-describedby={feedbackId}
              aria-invalid={state.refusal === null ? undefined : true}
              className={classNames(inputLook, 'max-w-28 font-figures')}
            />
            <span className="text-soft">{item.unit}</span>
          </span>
        </div>
      )}
      <div className="no-print mt-2 flex flex-wrap items-center gap-2">
        <Button type="submit" busy={sending}>
          Check my answer
        </Button>
        {missed ? (
          <Button type="submit" name="reveal" value="yes" variant="plain" busy={sending}>
            Show the answer
          </Button>
        ) : null}
      </div>
      <div id={feedbackId} role="status" className="mt-2 max-w-measure">
        <Said state={state} />
      </div>
    </form>
  );
}

function Label({ children }: { children: string }) {
  if (children === '') return null;
  return <span className="me-2 text-sm font-semibold text-soft">{children}</span>;
}

const verdicts = {
  right: { word: 'Yes.', look: 'border-good bg-good-soft' },
  near: { word: 'Nearly.', look: 'border-caution bg-caution-soft' },
  wrong: { word: 'Think again.', look: 'border-caution bg-caution-soft' },
} as const;

function Said({ state }: { state: CheckState }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // On a phone the answer may come up below the edge of the screen.
    if (state.tries > 0) box.current?.scrollIntoView({ block: 'nearest' });
  }, [state.tries]);
  if (state.refusal !== null) {
    return (
      <div ref={box} className="text-sm font-semibold text-danger">
        {state.refusal}
      </div>
    );
  }
  if (state.feedback === null) return null;
  const { word, look } = verdicts[state.feedback.verdict];
  return (
    <div ref={box} className={classNames('rounded-md border px-3 py-2', look)}>
      <p>
        <strong className="font-semibold">{word}</strong> {state.feedback.said}
      </p>
      {state.feedback.answer === null ? null : (
        <p className="mt-1">
          <strong className="font-semibold">The answer:</strong> {state.feedback.answer}
        </p>
      )}
    </div>
  );
}
