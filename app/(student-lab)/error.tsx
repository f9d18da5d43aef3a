'use client';

import { PageProblem } from '@/components/ui/page-problem';

export default function ErrorPage({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  return <PageProblem reference={error.digest} tryAgain={reset} />;
}
