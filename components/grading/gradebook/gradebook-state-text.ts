import type { GradebookState } from '@/lib/grading/gradebook-state';

/** The states as a teacher reads them, with what each means. Words first: colour is never alone. */
export const gradebookStateText: Readonly<
  Record<GradebookState, { word: string; meaning: string }>
> = {
  'not-started': { word: 'not started', meaning: 'no attempt yet' },
  'in-progress': { word: 'in progress', meaning: 'begun, or a part of it is still to come' },
  submitted: { word: 'submitted', meaning: 'in, without a mark yet' },
  late: { word: 'late', meaning: 'submitted after the due time and the grace' },
  missing: {
    word: 'missing',
    meaning: 'past the due time, and it or a part of it not submitted; not excused',
  },
  excused: { word: 'excused', meaning: 'does not count, by your word' },
  'needs-sign-off': {
    word: 'needs sign-off',
    meaning: 'passed, and a skill waits to be signed off at the telescope',
  },
  'not-yet': {
    word: 'not yet passed',
    meaning: 'below the pass mark, or a safety gate was failed',
  },
  complete: { word: 'complete', meaning: 'the pass mark is reached' },
  returned: { word: 'returned', meaning: 'given back for another try' },
};
