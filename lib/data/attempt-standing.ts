import { latePenalty } from '../grading/late-penalty';
import { classAccessSelect } from './access';
import type { AssignmentPolicy } from './assignment-input';
import { extendedDue, feedbackVisibleFrom } from './due-times';
import { policyOfAttempt } from './stored-policy';

/** Selects what {@link standingOf} reads: the frozen policy and all that may have changed since. */
export const standingSelect = {
  mode: true,
  policy: true,
  submittedAt: true,
  student: {
    select: {
      id: true,
      class: { select: classAccessSelect },
      groups: { select: { groupId: true } },
    },
  },
  assignment: {
    select: {
      feedbackReleasedAt: true,
      extensions: { select: { studentId: true, groupId: true, dueAt: true } },
    },
  },
} as const;

type StandingRow = {
  mode: 'practice' | 'check';
  policy: unknown;
  submittedAt: Date | null;
  student: { id: string; groups: readonly { groupId: string }[] };
  assignment: {
    feedbackReleasedAt: Date | null;
    extensions: readonly { studentId: string | null; groupId: string | null; dueAt: Date }[];
  } | null;
};

/**
 * Lateness, penalty and whether the student sees the result. The policy is the one that the attempt
 * started with; an extension counts whenever it was given. Practice is never late nor withheld.
 */
export function standingOf(attempt: StandingRow, now: Date) {
  if (attempt.mode === 'practice') {
    return { late: false, latePenalty: 0, visibleFrom: 'now', feedbackVisible: true, policy: null };
  }
  const policy = policyOfAttempt(attempt.policy);
  const groups = attempt.student.groups.map(({ groupId }) => groupId);
  const extensions = (attempt.assignment?.extensions ?? []).filter(
    ({ studentId, groupId }) =>
      studentId === attempt.student.id || (groupId !== null && groups.includes(groupId)),
  );
  const dueAt = extendedDue(extensions) ?? (policy.dueAt === null ? null : new Date(policy.dueAt));
  const { late, share } = lateness(policy, dueAt, attempt.submittedAt ?? now);
  const releasedAt = attempt.assignment?.feedbackReleasedAt ?? null;
  const visibleFrom = feedbackVisibleFrom({ policy, dueAt, releasedAt, now });
  return { late, latePenalty: share, visibleFrom, feedbackVisible: visibleFrom === 'now', policy };
}

/** What lateness takes by a policy from work that came at an instant; `dueAt` is the student's own. */
export const lateness = (
  policy: Pick<AssignmentPolicy, 'graceMinutes' | 'latePenaltyPerDay' | 'latePenaltyCap'>,
  dueAt: Date | null,
  submittedAt: Date,
): { late: boolean; share: number } =>
  latePenalty({
    submittedAtMs: submittedAt.getTime(),
    dueAtMs: dueAt?.getTime() ?? null,
    graceMinutes: policy.graceMinutes,
    penaltyPerDay: policy.latePenaltyPerDay,
    cap: policy.latePenaltyCap,
  });
