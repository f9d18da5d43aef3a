import { assignmentMark, type AssignmentMark } from '../grading/assignment-mark';
import { countedMark, type CountedMark, type MarkedAttempt } from '../grading/counted-mark';
import { gradebookState, type GradebookState } from '../grading/gradebook-state';
import type { AssignmentPolicy } from './assignment-input';
import { lateness } from './attempt-standing';
import { feedbackVisibleFrom } from './due-times';

/** One check of one student. */
export type ReckonedAttempt = {
  id: string;
  /** Null in work from before assignments had parts: it belongs to the first. */
  partId: string | null;
  status: 'open' | 'submitted';
  /** As it was when the attempt started. */
  policy: AssignmentPolicy;
  startedAt: Date;
  submittedAt: Date | null;
  returnedAt: Date | null;
  /** As it is marked now; null while it is not. */
  graded: { total: number; gateFailed: boolean } | null;
};

/** What the teacher has said of one student's work at one assignment. */
export type TeachersWord = { mark: number | null; excused: boolean } | undefined;

type Asked<Part> = {
  /** The marked parts, in their order. */
  parts: readonly Part[];
  /** The student's alone; those of one part in the order of their numbers. */
  attempts: readonly ReckonedAttempt[];
  /** The assignment's policy as it is now. */
  current: AssignmentPolicy;
  /** The student's own due time; null: the policy's. */
  extension: Date | null;
  word: TeachersWord;
  feedbackReleasedAt: Date | null;
  /** A skill that the assignment wants signed off is not. */
  needsSignOff: boolean;
  now: Date;
};

type Counted = CountedMark<MarkedAttempt & { id: string }>;

export type PartReckoning<Part> = {
  part: Part;
  attempts: readonly ReckonedAttempt[];
  state: GradebookState;
  counted: Counted | null;
  open: ReckonedAttempt | null;
  lastIn: ReckonedAttempt | null;
  returned: boolean;
  /** Whether what was handed in last came late. */
  late: boolean;
  /** Whether the student may see the results by now. */
  feedbackVisible: boolean;
};

export type Reckoning<Part> = {
  parts: PartReckoning<Part>[];
  whole: AssignmentMark;
  /** What counts, with any mark set by hand; not rounded. */
  mark: number | null;
  overridden: boolean;
  excused: boolean;
  gateFailed: boolean;
  passMark: number;
  feedbackVisible: boolean;
  /** For the teacher, who sees every result. */
  state: GradebookState;
  /** For the student: the same, but while a result is withheld. */
  stateToStudent: GradebookState;
};

/**
 * Where one student stands with one assignment. The one reckoning behind the teacher's cell and the
 * student's card: what the two are told differs in what is withheld and in nothing else.
 */
export function reckon<Part extends { id: string; weight: number }>(
  asked: Asked<Part>,
): Reckoning<Part> {
  const { current, extension, word, needsSignOff, now } = asked;
  const single = asked.parts.length === 1;
  const parts = asked.parts.map((part, index) => {
    const own = asked.attempts.filter(({ partId }) =>
      partId === null ? index === 0 : single || partId === part.id,
    );
    return reckonPart(part, own, asked);
  });
  const whole = assignmentMark(
    parts.map(({ part, counted }) => ({ weight: part.weight, counted })),
  );
  const setByHand = word?.mark ?? null;
  const overridden = setByHand !== null;
  const mark = setByHand ?? whole.mark;
  const gateFailed = !overridden && whole.gateFailed;
  const excused = word?.excused ?? false;
  const { passMark } = policyThatCounts(
    parts.flatMap(({ attempts }) => attempts),
    current,
  );
  const feedbackVisible = parts.every((part) => part.feedbackVisible);
  const submitted = parts.some(({ lastIn }) => lastIn !== null);
  const partUntouched = parts.some(({ lastIn, open }) => lastIn === null && open === null);
  const open = parts.find((part) => part.open !== null)?.open ?? null;
  const stateWhere = (resultShown: boolean): GradebookState =>
    gradebookState({
      excused,
      mark,
      passMark,
      gateFailed,
      resultShown,
      submitted,
      needsSignOff,
      late: parts.some(({ late }) => late),
      underWay: open !== null,
      partMissing: !overridden && parts.some(({ lastIn }) => lastIn === null),
      partUntouched,
      returned: !overridden && parts.some(({ returned }) => returned),
      // Of the work that is still to come: what is not begun goes by the assignment as it is now.
      dueAtMs: dueMs(submitted && partUntouched ? null : open, { current, extension }),
      nowMs: now.getTime(),
    });
  return {
    parts,
    whole,
    mark,
    overridden,
    excused,
    gateFailed,
    passMark,
    feedbackVisible,
    state: stateWhere(true),
    stateToStudent: stateWhere(feedbackVisible),
  };
}

function reckonPart<Part>(
  part: Part,
  attempts: readonly ReckonedAttempt[],
  asked: Asked<Part>,
): PartReckoning<Part> {
  const { current, extension, feedbackReleasedAt: releasedAt, now } = asked;
  const submitted = attempts.filter(({ status }) => status === 'submitted');
  const standings = submitted.map(({ policy, submittedAt }) => {
    const dueAt = extension ?? (policy.dueAt === null ? null : new Date(policy.dueAt));
    const { late, share } = lateness(policy, dueAt, submittedAt ?? now);
    return {
      late,
      share,
      visible: feedbackVisibleFrom({ policy, dueAt, releasedAt, now }) === 'now',
    };
  });
  const { counting, passMark } = policyThatCounts(attempts, current);
  const counted = countedMark(
    submitted.flatMap(({ id, graded }, index) => {
      const latePenalty = standings[index]?.share ?? 0;
      return graded === null
        ? []
        : [{ id, raw: graded.total, latePenalty, gateFailed: graded.gateFailed }];
    }),
    counting,
  );
  const open = attempts.find(({ status }) => status === 'open') ?? null;
  const lastIn = submitted.at(-1) ?? null;
  const returned = lastIn !== null && lastIn.returnedAt !== null;
  const late = standings.at(-1)?.late ?? false;
  const feedbackVisible = standings.every(({ visible }) => visible);
  return {
    part,
    attempts,
    counted,
    open,
    lastIn,
    returned,
    late,
    feedbackVisible,
    state: gradebookState({
      passMark,
      late,
      returned,
      excused: asked.word?.excused ?? false,
      mark: counted?.mark ?? null,
      gateFailed: counted?.gateFailed ?? false,
      resultShown: feedbackVisible,
      submitted: lastIn !== null,
      underWay: open !== null,
      dueAtMs: dueMs(open, { current, extension }),
      nowMs: now.getTime(),
    }),
  };
}

/**
 * The rules that hold for what a list of attempts comes to: those that the attempt begun last started
 * with, of attempts begun at once the later in the list; the assignment's own where there is none.
 */
const policyThatCounts = (
  attempts: readonly ReckonedAttempt[],
  current: AssignmentPolicy,
): AssignmentPolicy =>
  attempts.reduce<ReckonedAttempt | null>(
    (last, one) => (last === null || one.startedAt >= last.startedAt ? one : last),
    null,
  )?.policy ?? current;

/** When open work, or with null work that is not begun, is due; in milliseconds. */
function dueMs(
  open: ReckonedAttempt | null,
  { current, extension }: Pick<Asked<unknown>, 'current' | 'extension'>,
): number | null {
  const { dueAt } = open?.policy ?? current;
  return extension?.getTime() ?? (dueAt === null ? null : Date.parse(dueAt));
}
