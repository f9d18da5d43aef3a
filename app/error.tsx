'use client';

import { PageProblem } from '@/components/ui/page-problem';

/** For what breaks outside the shell, such as the shell itself. */
export default function ErrorPage({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  return (
    <main className="mx-auto max-w-[76rem] px-4 py-10 sm:px-6">
      <PageProblem reference={error.digest} tryAgain={reset} />
    </main>
  );
}
