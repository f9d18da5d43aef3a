import type { AssignmentDetails } from '@/lib/data/assignments';
import type { StudentAssignment } from '@/lib/data/attempts';
import { skillsOfLabs } from '@/lib/mastery/skills-of-labs';

/** The assignment as it stands for a student who has not begun. */
export const untouched = (assignment: AssignmentDetails): StudentAssignment => ({
  assignmentId: assignment.id,
  title: assignment.title,
  placeName: assignment.placeName,
  dueAt: assignment.policy.dueAt,
  dueTimeZone: assignment.dueTimeZone,
  state: 'not-started',
  mark: null,
  markByHand: false,
  gateFailed: false,
  passMark: assignment.policy.passMark,
  feedbackVisible: true,
  lessons: assignment.lessons,
  toSignOff: assignment.needsSignOff ? skillsOfLabs(assignment.parts.map(({ lab }) => lab)) : [],
  parts: assignment.parts.map(({ id, lab, templates, weight }) => ({
    partId: id,
    lab,
    templates,
    weight,
    state: 'not-started',
    mark: null,
    gateFailed: false,
    attemptsUsed: 0,
    attemptsAllowed: assignment.policy.attemptsAllowed,
    openAttemptId: null,
    lastSubmittedAttemptId: null,
    feedbackVisible: true,
  })),
});
