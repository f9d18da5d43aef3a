import type { AssignmentPolicy } from './assignment-input';

/** Selects the extensions of an assignment that concern one student. */
export const extensionsOf = (studentId: string) => ({
  where: { OR: [{ studentId }, { group: { members: { some: { studentId } } } }] },
  select: { studentId: true, dueAt: true },
});

type ExtensionRow = { studentId: string | null; dueAt: Date };

/** The student's own extension, else the latest of the student's groups, else null. */
export function extendedDue(extensions: readonly ExtensionRow[]): Date | null {
  const own = extensions.find(({ studentId }) => studentId !== null);
  if (own !== undefined) return own.dueAt;
  return extensions.reduce<Date | null>(
    (latest, { dueAt }) => (latest === null || dueAt > latest ? dueAt : latest),
    null,
  );
}

/**
 * From when a student sees marks and explanations: 'now', a UTC instant, or 'when-released'.
 * `dueAt` is the student's own due time.
 */
export function feedbackVisibleFrom(input: {
  policy: AssignmentPolicy;
  dueAt: Date | null;
  releasedAt: Date | null;
  now: Date;
}): string {
  switch (input.policy.feedback) {
    case 'at-once':
      return 'now';
    case 'after-due':
      return input.dueAt === null || input.now > input.dueAt ? 'now' : input.dueAt.toISOString();
    case 'when-released':
      return input.releasedAt === null ? 'when-released' : 'now';
  }
}
