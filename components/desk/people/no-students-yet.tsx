import type { ReactNode } from 'react';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';

/** In the place of a page that would list the students of a class that has none. */
export function NoStudentsYet({
  addAt,
  children,
}: {
  /** Where they are listed; null for whoever only looks on. */
  addAt: string | null;
  /** What will be here once there are some. */
  children: ReactNode;
}) {
  return (
    <EmptyState
      title="No students yet"
      action={
        addAt === null ? undefined : (
          <LinkButton variant="primary" href={addAt}>
            Add students
          </LinkButton>
        )
      }
    >
      {children}
    </EmptyState>
  );
}
