'use client';

import { useEffect, useRef, type ReactNode } from 'react';
import { Notice } from '@/components/ui/notice';
import type { Problem } from '@/lib/data/result';

type SignInProblemProps = {
  problem: Problem | null;
  title: string;
  /** What to do when it fails again. */
  children: ReactNode;
};

/**
 * A refused sign-in: the same words whatever was wrong, and the way on. A problem with one field is
 * shown at the field instead. Either way the eye and the focus are led to it.
 */
export function SignInProblem({ problem, title, children }: SignInProblemProps) {
  const box = useRef<HTMLDivElement>(null);
  const field = problem?.field;
  useEffect(() => {
    if (problem === null) return;
    if (field === undefined) box.current?.focus();
    else document.getElementById(field)?.focus();
  }, [problem, field]);
  if (problem === null || field !== undefined) return null;
  const unreached = problem.code === 'no-connection';
  return (
    <div ref={box} tabIndex={-1} role="alert">
      <Notice tone="danger" title={unreached ? 'Not sent' : title}>
        <p>{problem.message}</p>
        {unreached || problem.code === 'too-many-tries' ? null : children}
      </Notice>
    </div>
  );
}

/** The message for one field, when the problem is that field's. */
export function fieldError(problem: Problem | null, field: string): string | null {
  return problem?.field === field ? problem.message : null;
}
