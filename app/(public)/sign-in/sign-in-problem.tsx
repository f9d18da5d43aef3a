import type { ReactNode } from 'react';
import { Notice } from '@/components/ui/notice';
import type { Problem } from '@/lib/data/result';

type SignInProblemProps = {
  problem: Problem | null;
  title: string;
  /** What to do when it fails again. */
  children: ReactNode;
};

/** A refused sign-in: the same words whatever was wrong, and the way on. Nothing for a missing field. */
export function SignInProblem({ problem, title, children }: SignInProblemProps) {
  if (problem === null || problem.code === 'missing') return null;
  return (
    <Notice tone="danger" title={title} live="alert">
      <p>{problem.message}</p>
      {children}
    </Notice>
  );
}

/** The message for one field, when the problem is that field's. */
export function fieldError(problem: Problem | null, field: string): string | null {
  return problem?.field === field ? problem.message : null;
}
