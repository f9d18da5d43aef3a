import 'server-only';
import { canSeeAttempt, canSeeResult, type Viewer } from '../auth/policy';
import { afterPenalty } from '../grading/counted-mark';
import { classAccessSelect } from './access';
import { standingOf, standingSelect } from './attempt-standing';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { labTaskOf, type SubmittedContent } from './lab-tasks/lab-tasks';

type AttemptFacts = {
  id: string;
  mode: 'practice' | 'check';
  title: string;
  placeName: string;
  kitId: string | null;
  assignmentId: string | null;
  /** The part of the assignment that a check is of. */
  partId: string | null;
  studentId: string;
  studentName: string;
  classId: string;
  /** IANA, of the class. */
  classTimeZone: string;
  attemptNumber: number;
  /** UTC, ISO 8601. */
  submittedAt: string;
  late: boolean;
  /** The share of the mark that lateness takes, 0–1; 0 in practice. */
  latePenalty: number;
  /** The attempt's mark less the late penalty; null when the result is withheld. */
  mark: number | null;
  /** What a teacher set for the assignment instead; null where none did or the result is withheld. */
  markByHand: number | null;
  passMark: number | null;
  /** 'now', a UTC instant, or 'when-released'. */
  feedbackVisibleFrom: string;
};
/** `lab` tells whose task and whose result it is; the result is null while it is withheld. */
export type AttemptResult = AttemptFacts & SubmittedContent;

/** A submitted attempt for its student or the class's teachers, who see the result at any time. */
export async function getAttemptResult(
  viewer: Viewer,
  attemptId: string,
  clock: Clock = systemClock,
): Promise<AttemptResult | null> {
  const attempt = await db().attempt.findUnique({
    where: { id: attemptId },
    select: {
      id: true,
      title: true,
      placeName: true,
      kitId: true,
      assignmentId: true,
      partId: true,
      number: true,
      lab: true,
      variant: true,
      marks: { orderBy: { graderVersion: 'desc' }, take: 1, select: { total: true, result: true } },
      ...standingSelect,
      student: {
        select: {
          ...standingSelect.student.select,
          displayName: true,
          class: { select: { ...classAccessSelect, timeZone: true } },
        },
      },
    },
  });
  if (attempt === null || attempt.submittedAt === null || !canSeeAttempt(viewer, attempt))
    return null;
  const { policy, ...standing } = standingOf(attempt, clock.now());
  const { feedbackVisible } = standing;
  const mark = canSeeResult(viewer, { ...attempt, feedbackVisible }) ? attempt.marks[0] : undefined;
  const { id: studentId } = attempt.student;
  const override =
    attempt.mode === 'practice' || attempt.assignmentId === null
      ? null
      : await db().override.findUnique({
          where: { studentId_assignmentId: { studentId, assignmentId: attempt.assignmentId } },
          select: { mark: true },
        });
  return {
    id: attempt.id,
    mode: attempt.mode,
    title: attempt.title,
    placeName: attempt.placeName,
    kitId: attempt.kitId,
    assignmentId: attempt.assignmentId,
    partId: attempt.partId,
    studentId,
    studentName: attempt.student.displayName,
    classId: attempt.student.class.id,
    classTimeZone: attempt.student.class.timeZone,
    attemptNumber: attempt.number,
    submittedAt: attempt.submittedAt.toISOString(),
    late: standing.late,
    latePenalty: standing.latePenalty,
    mark:
      mark === undefined
        ? null
        : afterPenalty({ raw: mark.total, latePenalty: standing.latePenalty }),
    markByHand: mark === undefined ? null : (override?.mark ?? null),
    passMark: policy?.passMark ?? null,
    ...labTaskOf(attempt.lab).submitted({
      variant: attempt.variant,
      result: mark?.result ?? null,
    }),
    feedbackVisibleFrom: standing.visibleFrom,
  };
}
