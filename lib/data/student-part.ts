import type { GradebookState } from '../grading/gradebook-state';
import type { Lab } from '../variants/labs';
import type { StoredPart } from './assignment-parts';
import type { PartReckoning, ReckonedAttempt } from './assignment-reckoning';
import { policyOfAttempt } from './stored-policy';

/** One part of an assignment as its student sees it. */
export type StudentPart = {
  partId: string;
  lab: Lab;
  /** Kinds of task; for questions, the lessons that are asked about. */
  templates: string[];
  weight: number;
  state: GradebookState;
  /** null while there is none or the feedback is withheld. */
  mark: number | null;
  gateFailed: boolean;
  attemptsUsed: number;
  /** With the student's extra attempts and those that were given back; null: no limit. */
  attemptsAllowed: number | null;
  openAttemptId: string | null;
  lastSubmittedAttemptId: string | null;
  feedbackVisible: boolean;
};

/** Selects what {@link readAttempt} reads of one student's attempts. */
export const partAttemptSelect = {
  id: true,
  partId: true,
  status: true,
  policy: true,
  startedAt: true,
  submittedAt: true,
  returnedAt: true,
  marks: {
    orderBy: { graderVersion: 'desc' as const },
    take: 1,
    select: { total: true, gateFailed: true },
  },
};

/** Reads an attempt for the reckoning. */
export const readAttempt = ({
  marks: [graded],
  policy,
  ...attempt
}: Omit<ReckonedAttempt, 'policy' | 'graded'> & {
  policy: unknown;
  marks: readonly { total: number; gateFailed: boolean }[];
}): ReckonedAttempt => ({
  ...attempt,
  policy: policyOfAttempt(policy),
  graded: graded ?? null,
});

/** What is shown of a part to its student. `attemptsAllowed`: before those that were given back. */
export function studentPart(
  { part, attempts, ...standing }: PartReckoning<StoredPart & { id: string }>,
  attemptsAllowed: number | null,
): StudentPart {
  const { state, counted, open, lastIn, feedbackVisible } = standing;
  const givenBack = attempts.filter(({ returnedAt }) => returnedAt !== null).length;
  return {
    partId: part.partId,
    lab: part.lab,
    templates: part.templates,
    weight: part.weight,
    state,
    mark: feedbackVisible ? (counted?.mark ?? null) : null,
    gateFailed: feedbackVisible && (counted?.gateFailed ?? false),
    attemptsUsed: attempts.length,
    attemptsAllowed: attemptsAllowed === null ? null : attemptsAllowed + givenBack,
    openAttemptId: open?.id ?? null,
    lastSubmittedAttemptId: lastIn?.id ?? null,
    feedbackVisible,
  };
}
