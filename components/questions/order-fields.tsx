import { ArrowDown, ArrowUp } from 'lucide-react';
import { useState } from 'react';
import { moved, type AnswerFieldsProps } from './answers';

/**
 * Steps to put in order, first on top, by two buttons each. Without script the buttons send the form and
 * the server shifts the step.
 */
export function OrderFields({
  face,
  answer,
  onAnswer,
  name,
  disabled,
}: AnswerFieldsProps<'order'>) {
  const [said, setSaid] = useState('');
  const textOf = (id: string) => face.steps.find((step) => step.id === id)?.text ?? '';

  const move = (id: string, by: -1 | 1) => {
    const steps = moved(answer.steps, id, by);
    onAnswer({ kind: 'order', steps });
    setSaid(`${textOf(id)}: now ${String(steps.indexOf(id) + 1)} of ${String(steps.length)}.`);
  };

  return (
    <>
      <p className="text-sm text-soft">First on top.</p>
      <ol className="mt-1 space-y-1.5">
        {answer.steps.map((id, place) => (
          <li
            key={id}
            className="flex items-center gap-2 rounded-md border border-strong bg-panel py-1 ps-3 pe-1"
          >
            <input type="hidden" name={name} value={id} />
            <span aria-hidden="true" className="w-5 font-figures text-soft">
              {place + 1}.
            </span>
            <span className="min-w-0 flex-1">{textOf(id)}</span>
            {disabled
              ? null
              : ([-1, 1] as const).map((by) => {
                  const atEnd = by === -1 ? place === 0 : place === answer.steps.length - 1;
                  const Arrow = by === -1 ? ArrowUp : ArrowDown;
                  return (
                    <button
                      key={by}
                      type="submit"
                      name={`${name}-move`}
                      value={`${id} ${by === -1 ? 'up' : 'down'}`}
                      aria-label={`${by === -1 ? 'Earlier' : 'Later'}: ${textOf(id)}`}
                      // Stays where the focus is: a button that goes dead would drop it.
                      aria-disabled={atEnd || undefined}
                      onClick={(event) => {
                        event.preventDefault();
                        if (!atEnd) move(id, by);
                      }}
                      className="grid size-11 shrink-0 place-content-center rounded-md border border-strong bg-page text-accent hover:bg-sunken aria-disabled:opacity-40"
                    >
                      <Arrow aria-hidden="true" className="size-5" />
                    </button>
                  );
                })}
          </li>
        ))}
      </ol>
      <p role="status" className="sr-only">
        {said}
      </p>
    </>
  );
}
