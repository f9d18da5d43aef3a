import 'server-only';
import { z } from 'zod';
import { canTakeAssignment, canWorkOnAttempt, type Viewer } from '../auth/policy';
import { emptyPairDraft, pairDraftSchema, type PairDraft } from '../grading/pair-submission';
import { pairTemplates, type PairVariant } from '../variants/pair-variant';
import { classAccessSelect } from './access';
import { partsSelect, pickThePair, readParts } from './assignment-parts';
import { frozenTask } from './attempt-making';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { defaultPlace, eveningScenario, kitOrFirst, siteOrSchoolYard, telescopeAndEyepiece, tonightAt } from './default-evening';
import { extendedDue, extensionsOf } from './due-times';
import { hmacOf } from './env';
import { isUniqueViolation } from './is-unique-violation';
import { failure, notFound, success, type Result } from './result';
import { policyOfAttempt, policyOfColumns, policySelect } from './stored-policy';
import { storedVariantSchema } from './stored-attempt';

export { getAttemptResult, type AttemptResult } from './attempt-results';
export { listStudentAssignments, type StudentAssignment } from './student-assignments';
export { saveDraft, submitAttempt, type SubmittedAttempt } from './attempt-work';

export type AttemptMode = 'practice' | 'check';
export type OpenAttempt = {
  id: string;
  mode: AttemptMode;
  title: string;
  placeName: string;
  kitId: string | null;
  /** The task; never the answer key. */
  variant: PairVariant;
  draft: PairDraft;
  /** The sequence number that the next saved draft carries. */
  nextSequence: number;
  attemptNumber: number;
  attemptsAllowed: number | null;
  /** The student's own due time. UTC, ISO 8601. */
  dueAt: string | null;
  dueTimeZone: string;
  assignmentId: string | null;
};

/** Selects what starting an attempt has to know. */
const startSelect = (studentId: string) => ({
  id: true,
  title: true,
  state: true,
  dueTimeZone: true,
  ...policySelect,
  class: { select: classAccessSelect },
  parts: partsSelect,
  extensions: extensionsOf(studentId),
});

const loadForStart = async (viewer: Viewer, assignmentId: string) => {
  if (viewer.kind !== 'student') return null;
  const assignment = await db().assignment.findUnique({
    where: { id: assignmentId },
    select: startSelect(viewer.studentId),
  });
  return assignment !== null && canTakeAssignment(viewer, assignment) ? assignment : null;
};

/**
 * Starts the student's next attempt, or resumes the open one, which may be finished even after the
 * due time. Refused when none is left and when the due time is over.
 */
export async function startAttempt(
  viewer: Viewer,
  assignmentId: string,
  clock: Clock = systemClock,
): Promise<Result<{ attemptId: string }>> {
  const assignment = await loadForStart(viewer, assignmentId);
  if (assignment === null || viewer.kind !== 'student') return notFound();
  const { studentId } = viewer;
  const now = clock.now();
  const policy = policyOfColumns(assignment);
  const dueAt = extendedDue(assignment.extensions) ?? assignment.dueAt;
  const accommodation = await db().accommodation.findUnique({ where: { studentId } });
  const allowed =
    policy.attemptsAllowed === null ? Infinity : policy.attemptsAllowed + (accommodation?.extraAttempts ?? 0);

  // Twice at most: where two starts meet, the second finds the first one's attempt open.
  for (let round = 0; round < 2; round += 1) {
    const earlier = await db().attempt.findMany({
      where: { studentId, assignmentId, mode: 'check' },
      select: { id: true, status: true, template: true, number: true },
      orderBy: { number: 'asc' },
    });
    const open = earlier.find(({ status }) => status === 'open');
    if (open !== undefined) return success({ attemptId: open.id });
    if (earlier.length >= allowed) {
      return failure(
        'no-attempts-left',
        allowed === 1 ? 'You have used your one attempt.' : `You have used all ${allowed} attempts.`,
      );
    }
    if (dueAt !== null && now > dueAt) {
      return failure('too-late-to-start', 'The due time is over. Ask your teacher for more time.');
    }
    const number = (earlier.at(-1)?.number ?? 0) + 1;
    const lab = readParts(assignment.parts);
    const task = frozenTask({
      ...lab,
      seed: hmacOf(studentId, assignmentId, number, lab.partId),
      templatesSeen: earlier.map(({ template }) => template),
    });
    try {
      const { id } = await db().attempt.create({
        data: {
          ...task,
          studentId,
          assignmentId,
          partId: lab.partId,
          mode: 'check',
          number,
          title: assignment.title,
          placeName: lab.placeName,
          kitId: lab.kitId,
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

const practiceSchema = z.strictObject({
  kitId: z.string().max(60).optional(),
  assignmentId: z.string().max(60).optional(),
});

/**
 * A new variant each time; never counts. Under the sky of the given assignment, else of the class's
 * latest one, else of tonight at a town of ours. An earlier practice that was left lying goes.
 */
export async function startPractice(
  viewer: Viewer,
  input: { kitId?: string; assignmentId?: string },
  clock: Clock = systemClock,
): Promise<Result<{ attemptId: string }>> {
  if (viewer.kind !== 'student') return notFound();
  const parsed = practiceSchema.safeParse(input);
  if (!parsed.success) return failure('bad-input', 'This practice cannot be read.');
  const { kitId, assignmentId } = parsed.data;
  const { studentId, classId } = viewer;
  const latest = await db().assignment.findFirst({
    where: { classId, state: 'published' },
    orderBy: [{ publishedAt: 'desc' }, { id: 'asc' }],
    select: { id: true },
  });
  const wanted = assignmentId ?? latest?.id;
  const assignment = wanted === undefined ? null : await loadForStart(viewer, wanted);
  if (assignment === null && assignmentId !== undefined) return notFound();
  const now = clock.now();
  const evening = assignment === null ? defaultEvening(kitId, now) : readParts(assignment.parts);
  const kit = kitId === undefined ? null : kitOrFirst(kitId);
  const before = await db().attempt.findMany({
    where: { studentId, mode: 'practice' },
    orderBy: [{ startedAt: 'desc' }, { number: 'desc' }],
    select: { number: true, template: true },
    take: 3,
  });
  const number = Math.max(0, ...before.map((attempt) => attempt.number)) + 1;
  const task = frozenTask({
    seed: hmacOf(studentId, 'practice', number, now.getTime(), pickThePair),
    scenario: { ...evening.scenario, ...(kit === null ? {} : telescopeAndEyepiece(kit)) },
    templates: pairTemplates,
    templatesSeen: before.map(({ template }) => template),
    windowMinutes: Math.max(evening.windowMinutes, practiceWindowMinutes),
  });
  const attempt = await db().$transaction(async (transaction) => {
    await transaction.attempt.deleteMany({ where: { studentId, mode: 'practice', status: 'open' } });
    return transaction.attempt.create({
      data: {
        ...task,
        studentId,
        assignmentId: assignmentId ?? null,
        mode: 'practice',
        number,
        title: 'Pick the pair',
        placeName: evening.placeName,
        kitId: kit?.id ?? evening.kitId,
        dueTimeZone: evening.scenario.timeZone,
        startedAt: now,
        events: { create: { sequence: 0, kind: 'started', payload: {}, at: now } },
      },
      select: { id: true },
    });
  });
  return success({ attemptId: attempt.id });
}

/** Wide enough that the same night does not come back at once. */
const practiceWindowMinutes = 90;

function defaultEvening(kitId: string | undefined, now: Date) {
  const kit = kitOrFirst(kitId ?? null);
  const scenario = eveningScenario({
    place: defaultPlace,
    localTime: tonightAt(defaultPlace, now),
    kit,
    site: siteOrSchoolYard(null),
  });
  return { scenario, placeName: defaultPlace.name, kitId: kit.id, windowMinutes: practiceWindowMinutes };
}

/** The student's own attempt while it is open, with the last draft that was saved. */
export async function getOpenAttempt(viewer: Viewer, attemptId: string): Promise<OpenAttempt | null> {
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
      variant: true,
      policy: true,
      dueTimeZone: true,
      assignmentId: true,
      assignment: { select: { extensions: extensionsOf(studentId) } },
      student: {
        select: {
          id: true,
          class: { select: classAccessSelect },
          accommodation: { select: { extraAttempts: true } },
        },
      },
      events: { orderBy: { sequence: 'desc' }, take: 1, select: { sequence: true, kind: true, payload: true } },
    },
  });
  if (attempt === null || attempt.status !== 'open' || !canWorkOnAttempt(viewer, attempt)) return null;
  const policy = attempt.mode === 'check' ? policyOfAttempt(attempt.policy) : null;
  const [last] = attempt.events;
  const extra = attempt.student.accommodation?.extraAttempts ?? 0;
  const allowed = policy?.attemptsAllowed ?? null;
  return {
    id: attemptId,
    mode: attempt.mode,
    title: attempt.title,
    placeName: attempt.placeName,
    kitId: attempt.kitId,
    variant: storedVariantSchema.parse(attempt.variant),
    draft: last?.kind === 'draft' ? pairDraftSchema.parse(last.payload) : emptyPairDraft,
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
