import {
  assignmentPolicySchema,
  type AssignmentPolicy,
  type CountingAttempt,
  type FeedbackTime,
} from './assignment-input';
import type {
  CountingAttempt as CountingColumn,
  FeedbackTime as FeedbackColumn,
} from './generated/enums';

/** The words of the database's enumerations carry underscores. */
const feedbackOfColumn: Record<FeedbackColumn, FeedbackTime> = {
  at_once: 'at-once',
  after_due: 'after-due',
  when_released: 'when-released',
};
const columnOfFeedback: Record<FeedbackTime, FeedbackColumn> = {
  'at-once': 'at_once',
  'after-due': 'after_due',
  'when-released': 'when_released',
};

export const policySelect = {
  attemptsAllowed: true,
  dueAt: true,
  graceMinutes: true,
  latePenaltyPerDay: true,
  latePenaltyCap: true,
  passMark: true,
  feedback: true,
  counting: true,
} as const;

export type PolicyColumns = {
  attemptsAllowed: number | null;
  dueAt: Date | null;
  graceMinutes: number;
  latePenaltyPerDay: number;
  latePenaltyCap: number;
  passMark: number;
  feedback: FeedbackColumn;
  counting: CountingColumn;
};

export function policyOfColumns(row: PolicyColumns): AssignmentPolicy {
  const counting: CountingAttempt = row.counting;
  return {
    attemptsAllowed: row.attemptsAllowed,
    dueAt: row.dueAt?.toISOString() ?? null,
    graceMinutes: row.graceMinutes,
    latePenaltyPerDay: row.latePenaltyPerDay,
    latePenaltyCap: row.latePenaltyCap,
    passMark: row.passMark,
    feedback: feedbackOfColumn[row.feedback],
    counting,
  };
}

export const columnsOfPolicy = (policy: AssignmentPolicy): PolicyColumns => ({
  attemptsAllowed: policy.attemptsAllowed,
  dueAt: policy.dueAt === null ? null : new Date(policy.dueAt),
  graceMinutes: policy.graceMinutes,
  latePenaltyPerDay: policy.latePenaltyPerDay,
  latePenaltyCap: policy.latePenaltyCap,
  passMark: policy.passMark,
  feedback: columnOfFeedback[policy.feedback],
  counting: policy.counting,
});

/** The policy that an attempt froze at its start. */
export const policyOfAttempt = (stored: unknown): AssignmentPolicy =>
  assignmentPolicySchema.parse(stored);
