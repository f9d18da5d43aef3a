'use client';

import { Button } from './button';
import { buttonLook } from './button-look';

type PageProblemProps = {
  /** Next's short reference to the entry in the server's log; nothing about the reader. */
  reference?: string;
  tryAgain: () => void;
};

/**
 * The page broke. What was saved is safe; here is what to do. Every first visit loads this, so it
 * leans on little; and its link loads the front page anew, which a broken page had better do.
 */
export function PageProblem({ reference, tryAgain }: PageProblemProps) {
  return (
    <div role="alert">
      <header className="mb-6">
        <h1 className="text-3xl font-[560] tracking-[-0.012em]">This page did not come together</h1>
        <p className="mt-1 max-w-measure text-balance text-soft">
          Something went wrong on our side, not yours. What you had already saved or handed in is
          kept.
        </p>
        <div aria-hidden="true" className="bench-edge mt-4" />
      </header>
      <div className="max-w-measure space-y-4">
        <p>
          Try once more. If it happens again, go back to the start and come in from there; and tell
          whoever runs this Duskbench what you were doing.
        </p>
        {reference === undefined ? null : (
          <p className="text-sm text-soft">
            For them: the server’s log has this under{' '}
            <span className="font-figures text-ink">{reference}</span>.
          </p>
        )}
        <div className="flex flex-wrap gap-2">
          <Button variant="primary" onClick={tryAgain}>
            Try again
          </Button>
          {/* eslint-disable-next-line @next/next/no-html-link-for-pages -- see above */}
          <a href="/" className={buttonLook('quiet', 'normal')}>
            To the start
          </a>
        </div>
      </div>
    </div>
  );
}
