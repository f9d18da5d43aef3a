import 'server-only';
import { canWorkOnAttempt, type Viewer } from '../auth/policy';
import { classAccessSelect } from './access';
import { looksSoFar } from './attempt-looks';
import { readParts } from './assignment-parts';
import { loadForStart } from './assignment-to-take';
import { frozenTask } from './attempt-making';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { extendedDue, extensionsOf } from './due-times';
import { hmacOf } from './env';
import { isUniqueViolation } from './is-unique-violation';
import type { Lab } from '../variants/labs';
import { labTaskOf, type OpenContent } from './lab-tasks/lab-tasks';
import { failure, notFound, success, type Result } from './result';
import { readExtraTime, timeFor } from './extra-time';
import { policyOfAttempt, policyOfColumns } from './stored-policy';

export { startPractice } from './practice-attempts';
export { getAttemptResult, type AttemptResult } from './attempt-results';
export {
  listStudentAssignments,
  type StudentAssignment,
  type StudentPart,
} from './student-assignments';
export { lookAt } from './attempt-looks';
export { saveDraft, submitAttempt, type SubmittedAttempt } from './attempt-work';

/** Selects the attempts at a part that a student was given back: each allows one more. */
const returnedOf = (studentId: string) => ({
  attempts: {
    where: { studentId, mode: 'check' as const, returnedAt: { not: null } },
    select: { id: true },
  },
});

export type AttemptMode = 'practice' | 'check';
type OpenAttemptFacts = {
  id: string;
  mode: AttemptMode;
  title: string;
  placeName: string;
  kitId: string | null;
  /** The sequence number that the next saved draft carries. */
  nextSequence: number;
  attemptNumber: number;
  attemptsAllowed: number | null;
  /** The student's own due time. UTC, ISO 8601. */
  dueAt: string | null;
  dueTimeZone: string;
  assignmentId: string | null;
};
/** The task, never the answer key, and the work so far; `lab` tells whose they are. */
export type OpenAttempt = OpenAttemptFacts & OpenContent;

/**
 * Starts the student's next attempt at a part, or resumes the open one, which may be finished even after
 * the due time. Refused when none is left and when the due time is over. Each part has the attempts that
 * the assignment allows; one that was given back does not count as used.
 */
export async function startAttempt(
  viewer: Viewer,
  assignmentId: string,
  partId: string,
  clock: Clock = systemClock,
): Promise<Result<{ attemptId: string }>> {
  const assignment = await loadForStart(viewer, assignmentId);
  if (assignment === null || viewer.kind !== 'student') return notFound();
  const { parts, scenario, placeName, kitId } = readParts(assignment.parts);
  const part = parts.find((one) => one.partId === partId);
  if (part === undefined) return notFound();
  const { studentId } = viewer;
  const now = clock.now();
  const policy = policyOfColumns(assignment);
  const dueAt = extendedDue(assignment.extensions) ?? assignment.dueAt;
  const accommodation = await db().accommodation.findUnique({ where: { studentId } });
  const allowed =
    policy.attemptsAllowed === null
      ? Infinity
      : policy.attemptsAllowed + (accommodation?.extraAttempts ?? 0);

  // Twice at most: where two starts meet, the second finds the first one's attempt open.
  for (let round = 0; round < 2; round += 1) {
    const earlier = await db().attempt.findMany({
      where: { studentId, partId, mode: 'check' },
      select: {
        id: true,
        status: true,
        lab: true,
        template: true,
        number: true,
        returnedAt: true,
      },
      orderBy: { number: 'asc' },
    });
    const open = earlier.find(({ status }) => status === 'open');
    if (open !== undefined) return success({ attemptId: open.id });
    const used = earlier.filter(({ returnedAt }) => returnedAt === null).length;
    if (used >= allowed) return noAttemptsLeft(allowed);
    if (dueAt !== null && now > dueAt) {
      return failure('too-late-to-start', 'The due time is over. Ask your teacher for more time.');
    }
    const number = (earlier.at(-1)?.number ?? 0) + 1;
    const task = frozenTask({
      ...part,
      scenario,
      kitId,
      ...timeFor(part.minutesAllowed, readExtraTime(accommodation?.extraTime)),
      seed: hmacOf(studentId, assignmentId, number, partId),
      templatesSeen: earlier.filter(({ lab }) => lab === part.lab).map(({ template }) => template),
    });
    try {
      const { id } = await db().attempt.create({
        data: {
          ...task,
          studentId,
          assignmentId,
          partId,
          mode: 'check',
          number,
          title: partTitle(assignment.title, part.lab, parts.length),
          placeName,
          kitId,
          policy,
          dueTimeZone: assignment.dueTimeZone,
          startedAt: now,
          events: { create: { sequence: 0, kind: 'started', payload: {}, at: now } },
        },
        select: { id: true },
      });
      return success({ attemptId: id });
    } catch (error) {
      if (!isUniqueViolation(error)) throw error;
    }
  }
  return failure('try-again', 'That did not work. Try again.');
}

const noAttemptsLeft = (allowed: number) =>
  failure(
    'no-attempts-left',
    allowed === 1 ? 'You have used your one attempt.' : `You have used all ${allowed} attempts.`,
  );

/** Where an assignment is more than one thing, an attempt is called after the one that it is of. */
const partTitle = (title: string, lab: Lab, parts: number): string => {
  const { title: name } = labTaskOf(lab);
  return parts === 1 || title === name ? title : `${title}: ${name}`;
};

/** The student's own attempt while it is open, with the last draft and all that was looked at. */
export async function getOpenAttempt(
  viewer: Viewer,
  attemptId: string,
): Promise<OpenAttempt | null> {
  if (viewer.kind !== 'student') return null;
  const { studentId } = viewer;
  const attempt = await db().attempt.findUnique({
    where: { id: attemptId },
    select: {
      mode: true,
      status: true,
      title: true,
      placeName: true,
      kitId: true,
      number: true,
      lab: true,
      variant: true,
      policy: true,
      dueTimeZone: true,
      assignmentId: true,
      assignment: { select: { extensions: extensionsOf(studentId) } },
      part: { select: returnedOf(studentId) },
      student: {
        select: {
          id: true,
          class: { select: classAccessSelect },
          accommodation: { select: { extraAttempts: true } },
        },
      },
      events: {
        // Looks stand below 0, so the last one is never a look.
        orderBy: { sequence: 'desc' },
        take: 1,
        select: { sequence: true, kind: true, payload: true },
      },
    },
  });
  if (attempt === null || attempt.status !== 'open' || !canWorkOnAttempt(viewer, attempt))
    return null;
  const policy = attempt.mode === 'check' ? policyOfAttempt(attempt.policy) : null;
  const [last] = attempt.events;
  const { lookedAt } = await looksSoFar(db(), attemptId);
  const extra =
    (attempt.student.accommodation?.extraAttempts ?? 0) + (attempt.part?.attempts.length ?? 0);
  const allowed = policy?.attemptsAllowed ?? null;
  return {
    id: attemptId,
    mode: attempt.mode,
    title: attempt.title,
    placeName: attempt.placeName,
    kitId: attempt.kitId,
    ...labTaskOf(attempt.lab).open({
      variant: attempt.variant,
      draft: last?.kind === 'draft' ? last.payload : null,
      lookedAt,
    }),
    nextSequence: (last?.sequence ?? 0) + 1,
    attemptNumber: attempt.number,
    attemptsAllowed: allowed === null ? null : allowed + extra,
    dueAt:
      policy === null
        ? null
        : (extendedDue(attempt.assignment?.extensions ?? [])?.toISOString() ?? policy.dueAt),
    dueTimeZone: attempt.dueTimeZone,
    assignmentId: attempt.assignmentId,
  };
}
