'use client';

import { useEffect, useRef } from 'react';
import { CircleAlert } from 'lucide-react';

/** The shape of lib/data's Problem. */
export type ShownProblem = { code: string; message: string; field?: string };

type ErrorSummaryProps = {
  problems: readonly ShownProblem[];
  /**
   * The box takes the focus when this changes; left out, whenever the problems do. For a form that
   * takes problems off the list while they are being mended.
   */
  refusal?: unknown;
  title?: string;
};

/**
 * What kept a form from being taken, at its top, in focus as soon as it appears. A problem with a
 * field is a link to the control whose id is that field's name.
 */
export function ErrorSummary({ problems, refusal = problems, title }: ErrorSummaryProps) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.focus();
  }, [refusal]);
  if (problems.length === 0) return null;
  return (
    <div
      ref={box}
      role="alert"
      tabIndex={-1}
      className="rounded-md border-2 border-danger bg-danger-soft px-4 py-3"
    >
      <p className="flex items-start gap-2 font-semibold text-danger">
        <CircleAlert aria-hidden="true" className="mt-[0.2em] size-5 shrink-0" />
        {title ??
          (problems.length === 1
            ? 'One thing needs another look'
            : 'Some things need another look')}
      </p>
      <ul className="mt-1 max-w-measure space-y-1 ps-7">
        {problems.map((problem) => (
          <li key={`${problem.code} ${problem.field ?? ''} ${problem.message}`}>
            {problem.field === undefined ? (
              problem.message
            ) : (
              <a href={`#${problem.field}`} className="text-danger underline underline-offset-4">
                {problem.message}
              </a>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
