import { countedMark } from '../grading/counted-mark';
import { gradebookState, type GradebookState } from '../grading/gradebook-state';
import type { Lab } from '../variants/labs';
import type { AssignmentPolicy } from './assignment-input';
import type { StoredPart } from './assignment-parts';
import { standingOf } from './attempt-standing';
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

/** Selects what {@link partStanding} reads of one student's attempts. */
export const partAttemptSelect = {
  id: true,
  partId: true,
  mode: true,
  status: true,
  policy: true,
  submittedAt: true,
  returnedAt: true,
  marks: {
    orderBy: { graderVersion: 'desc' as const },
    take: 1,
    select: { total: true, gateFailed: true },
  },
};

type PartAttempt = {
  id: string;
  mode: 'practice' | 'check';
  status: 'open' | 'submitted';
  policy: unknown;
  submittedAt: Date | null;
  returnedAt: Date | null;
  marks: readonly { total: number; gateFailed: boolean }[];
};

/** How one student stands with one part: what is shown of it, and what the whole is made of. */
export function partStanding(input: {
  part: StoredPart;
  /** The student's checks at this part, in order. */
  attempts: readonly PartAttempt[];
  studentId: string;
  /** The assignment's policy as it is now. */
  current: AssignmentPolicy;
  extension: Date | null;
  feedbackReleasedAt: Date | null;
  excused: boolean;
  dueAt: string | null;
  extraAttempts: number;
  now: Date;
}) {
  const { part, attempts, studentId, current, extension, now } = input;
  const open = attempts.find(({ status }) => status === 'open');
  const submitted = attempts.filter(({ status }) => status === 'submitted');
  const latest = attempts.at(-1) ?? null;
  // The rules that the latest attempt started with hold for what is shown of it.
  const policy = latest === null ? null : policyOfAttempt(latest.policy);
  const { counting, passMark } = policy ?? current;
  const standings = submitted.map((attempt) =>
    standingOf(
      {
        ...attempt,
        student: { id: studentId, groups: [] },
        assignment: {
          feedbackReleasedAt: input.feedbackReleasedAt,
          extensions: extension === null ? [] : [{ studentId, groupId: null, dueAt: extension }],
        },
      },
      now,
    ),
  );
  const feedbackVisible = standings.every((standing) => standing.feedbackVisible);
  const counted = countedMark(
    submitted.flatMap(({ marks }, index) => {
      const [graded] = marks;
      const latePenalty = standings[index]?.latePenalty ?? 0;
      return graded === undefined
        ? []
        : [{ raw: graded.total, latePenalty, gateFailed: graded.gateFailed }];
    }),
    counting,
  );
  const late = standings.at(-1)?.late ?? false;
  const lastIn = submitted.at(-1);
  const returned = lastIn !== undefined && lastIn.returnedAt !== null;
  const givenBack = attempts.filter(({ returnedAt }) => returnedAt !== null).length;
  const shown: StudentPart = {
    partId: part.partId,
    lab: part.lab,
    templates: part.templates,
    weight: part.weight,
    state: gradebookState({
      excused: input.excused,
      mark: counted?.mark ?? null,
      passMark,
      gateFailed: counted?.gateFailed ?? false,
      resultShown: feedbackVisible,
      late,
      submitted: submitted.length > 0,
      underWay: open !== undefined,
      returned,
      dueAtMs: input.dueAt === null ? null : Date.parse(input.dueAt),
      nowMs: now.getTime(),
    }),
    mark: feedbackVisible ? (counted?.mark ?? null) : null,
    gateFailed: feedbackVisible && (counted?.gateFailed ?? false),
    attemptsUsed: attempts.length,
    attemptsAllowed:
      current.attemptsAllowed === null
        ? null
        : current.attemptsAllowed + input.extraAttempts + givenBack,
    openAttemptId: open?.id ?? null,
    lastSubmittedAttemptId: lastIn?.id ?? null,
    feedbackVisible,
  };
  return { shown, counted, policy, late, returned, submitted: lastIn !== undefined };
}
