import type { GradebookState } from './gradebook-state';

/** The states in a teacher's words: the same on the screen, on paper and in files. */
export const gradebookStateWords: Readonly<Record<GradebookState, string>> = {
  'not-started': 'not started',
  'in-progress': 'in progress',
  submitted: 'submitted',
  late: 'late',
  missing: 'missing',
  excused: 'excused',
  'needs-sign-off': 'needs sign-off',
  'not-yet': 'not yet passed',
  complete: 'complete',
  returned: 'returned',
};
