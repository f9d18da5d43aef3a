import type { GradebookState } from '@/lib/grading/gradebook-state';
import { gradebookStateWords as words } from '@/lib/grading/gradebook-state-words';

/** The states as a teacher reads them, with what each means. Words first: colour is never alone. */
export const gradebookStateText: Readonly<
  Record<GradebookState, { word: string; meaning: string }>
> = {
  'not-started': { word: words['not-started'], meaning: 'no attempt yet' },
  'in-progress': { word: words['in-progress'], meaning: 'begun, or a part of it is still to come' },
  submitted: { word: words.submitted, meaning: 'in, without a mark yet' },
  late: { word: words.late, meaning: 'submitted after the due time and the grace' },
  missing: {
    word: words.missing,
    meaning: 'past the due time, and it or a part of it not submitted; not excused',
  },
  excused: { word: words.excused, meaning: 'does not count, by your word' },
  'needs-sign-off': {
    word: words['needs-sign-off'],
    meaning: 'passed, and a skill waits to be signed off at the telescope',
  },
  'not-yet': {
    word: words['not-yet'],
    meaning: 'below the pass mark, or a safety gate was failed',
  },
  complete: { word: words.complete, meaning: 'the pass mark is reached' },
  returned: { word: words.returned, meaning: 'given back for another try' },
};
