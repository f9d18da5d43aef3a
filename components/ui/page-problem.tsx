'use client';

import { Button } from './button';
import { LinkButton } from './link-button';
import { PageHeader } from './page-header';
import { routes } from '@/lib/routes';

type PageProblemProps = {
  /** Next's short reference to the entry in the server's log; nothing about the reader. */
  reference?: string;
  tryAgain: () => void;
};

/** The page broke. What was saved is safe; here is what to do. */
export function PageProblem({ reference, tryAgain }: PageProblemProps) {
  return (
    <div role="alert">
      <PageHeader
        title="This page did not come together"
        lead="Something went wrong on our side, not yours. What you had already saved or handed in is kept."
      />
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
          <LinkButton href={routes.home()}>To the start</LinkButton>
        </div>
      </div>
    </div>
  );
}
