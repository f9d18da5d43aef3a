import { reachesPassMark } from '../mastery/pass-mark';

export type GradebookState =
  | 'not-started'
  | 'in-progress'
  | 'submitted'
  | 'late'
  | 'missing'
  | 'excused'
  | 'needs-sign-off'
  | 'not-yet'
  | 'complete'
  | 'returned';

/** Where one student stands with one assignment. Instants in milliseconds. */
export function gradebookState(input: {
  excused: boolean;
  /** What counts, with any override; null while there is none. */
  mark: number | null;
  passMark: number;
  /** In what counts; false where a teacher has set the mark. */
  gateFailed: boolean;
  /** Nobody is told before the result may be shown: then it is only submitted, or late. */
  resultShown: boolean;
  /** Whether the last submission came late. */
  late: boolean;
  submitted: boolean;
  underWay: boolean;
  /** A part of it has nothing handed in; false where a teacher has set the mark. */
  partMissing?: boolean;
  /** A part of it has nothing handed in and nothing open. */
  partUntouched?: boolean;
  /** The last work of some part was given back; false where a teacher has set the mark. */
  returned?: boolean;
  /** It asks for skills that have not been signed off at the real telescope. */
  needsSignOff?: boolean;
  /** The student's own due time, of what is still to be handed in. */
  dueAtMs: number | null;
  nowMs: number;
}): GradebookState {
  if (input.excused) return 'excused';
  if (input.returned === true) return 'returned';
  const pastDue = input.dueAtMs !== null && input.nowMs > input.dueAtMs;
  if (input.submitted && input.partMissing === true)
    return pastDue && input.partUntouched === true ? 'missing' : 'in-progress';
  if (input.submitted && !input.resultShown) return input.late ? 'late' : 'submitted';
  if (input.mark !== null) {
    const { mark, passMark, gateFailed } = input;
    if (!reachesPassMark({ mark, passMark, gateFailed })) return 'not-yet';
    return input.needsSignOff === true ? 'needs-sign-off' : 'complete';
  }
  if (input.submitted) return input.late ? 'late' : 'submitted';
  if (pastDue) return 'missing';
  return input.underWay ? 'in-progress' : 'not-started';
}
