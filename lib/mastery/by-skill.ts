import type { Skill } from '../course/skills';

type Piece = { studentId: string; skill: Skill };

/**
 * Looks up the pieces of one student and skill, in the order they came in. The whole list is gone through
 * once, here: a class asks for students × skills of them.
 */
export function bySkill<P extends Piece>(
  pieces: readonly P[],
): (studentId: string, skill: Skill) => readonly P[] {
  const byStudent = new Map<string, Map<Skill, P[]>>();
  for (const piece of pieces) {
    const ofStudent = byStudent.get(piece.studentId) ?? new Map<Skill, P[]>();
    byStudent.set(piece.studentId, ofStudent);
    const ofSkill = ofStudent.get(piece.skill);
    if (ofSkill === undefined) ofStudent.set(piece.skill, [piece]);
    else ofSkill.push(piece);
  }
  return (studentId, skill) => byStudent.get(studentId)?.get(skill) ?? [];
}
