/** Who is asking. Every function in lib/data takes one first. */
export type Viewer =
  | { kind: 'anonymous' }
  | { kind: 'teacher'; teacherId: string; displayName: string }
  | { kind: 'student'; studentId: string; classId: string; displayName: string };
