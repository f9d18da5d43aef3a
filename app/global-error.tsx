'use client';

import { PageProblem } from '@/components/ui/page-problem';
import './globals.css';

/** For what breaks in the root layout; it brings its own document. */
export default function GlobalError({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  return (
    <html lang="en">
      <body>
        <title>Something broke · Duskbench</title>
        <main className="mx-auto max-w-[76rem] px-4 py-10 sm:px-6">
          <PageProblem reference={error.digest} tryAgain={reset} />
        </main>
      </body>
    </html>
  );
}
