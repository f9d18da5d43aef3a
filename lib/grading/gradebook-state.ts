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
