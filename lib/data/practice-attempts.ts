import 'server-only';
import { z } from 'zod';
import type { Viewer } from '../auth/policy';
import { labOptions, labs, type Lab } from '../variants/labs';
import { readParts } from './assignment-parts';
import { loadForStart } from './assignment-to-take';
import { frozenTask } from './attempt-making';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import {
  defaultPlace,
  eveningScenario,
  kitOrFirst,
  siteOrSchoolYard,
  telescopeAndEyepiece,
  tonightAt,
} from './default-evening';
import { hmacOf } from './env';
import { isUniqueViolation } from './is-unique-violation';
import { labTaskOf } from './lab-tasks/lab-tasks';
import { failure, notFound, success, type Result } from './result';

const practiceSchema = z.strictObject({
  lab: z.enum(labs).optional(),
  kitId: z.string().max(60).optional(),
  assignmentId: z.string().max(60).optional(),
  partId: z.string().max(60).optional(),
});

/**
 * A new variant each time; never counts. Of the given lab, else of the given assignment's: the named
 * part's, or the first one's. Under the sky of the given assignment, else of the class's latest one, else
 * of tonight at a town of ours. An earlier practice that was left lying goes.
 */
export async function startPractice(
  viewer: Viewer,
  input: { lab?: Lab; kitId?: string; assignmentId?: string; partId?: string },
  clock: Clock = systemClock,
): Promise<Result<{ attemptId: string }>> {
  if (viewer.kind !== 'student') return notFound();
  const parsed = practiceSchema.safeParse(input);
  if (!parsed.success) return failure('bad-input', 'This practice cannot be read.');
  const { kitId, assignmentId, partId } = parsed.data;
  const { studentId, classId } = viewer;
  const latest = await db().assignment.findFirst({
    where: {
      classId,
      state: 'published',
      // Questions alone have no sky of their own.
      parts: { some: { kind: 'lab', reference: { notIn: labsWithoutSky } } },
    },
    orderBy: [{ publishedAt: 'desc' }, { id: 'asc' }],
    select: { id: true },
  });
  const wanted = assignmentId ?? latest?.id;
  const assignment = wanted === undefined ? null : await loadForStart(viewer, wanted);
  if (assignment === null && assignmentId !== undefined) return notFound();
  const now = clock.now();
  const set = assignment === null ? null : readParts(assignment.parts);
  const evening = set ?? defaultEvening(kitId, now);
  const part =
    set === null || assignmentId === undefined
      ? undefined
      : (set.parts.find((one) => one.partId === partId) ??
        set.parts.find(({ lab }) => parsed.data.lab === undefined || lab === parsed.data.lab));
  const asAssigned = part?.lab;
  const task = labTaskOf(parsed.data.lab ?? asAssigned ?? 'pick-the-pair');
  const { lab } = task;
  const kit = kitId === undefined ? null : kitOrFirst(kitId);
  const kept = {
    studentId,
    assignmentId: assignmentId ?? null,
    mode: 'practice',
    title: task.title,
    placeName: evening.placeName,
    kitId: kit?.id ?? evening.kitId,
    dueTimeZone: evening.scenario.timeZone,
    startedAt: now,
  } as const;

  // Twice at most: where two starts of the same meet, both get the attempt of the one that was first.
  for (let round = 0; round < 2; round += 1) {
    const before = await practicesOf(db(), studentId);
    const number = nextNumber(before);
    const frozen = frozenTask({
      lab,
      seed: hmacOf(studentId, 'practice', number, now.getTime(), lab),
      scenario: { ...evening.scenario, ...(kit === null ? {} : telescopeAndEyepiece(kit)) },
      // Of lessons the assigned ones are practised; else any kind of task of the lab.
      templates:
        labOptions[lab].ofAllKinds === true && part?.lab === lab ? part.templates : task.templates,
      templatesSeen: before
        .filter((one) => one.lab === lab)
        .slice(0, practicesRemembered)
        .map(({ template }) => template),
      windowMinutes: Math.max(part?.windowMinutes ?? 0, practiceWindowMinutes),
      kitId: kept.kitId,
      minutesAllowed: null,
      mayPause: true,
    });
    try {
      const attempt = await db().$transaction(async (transaction) => {
        // The sky took a while to make, and without an assignment no key of the table is violated.
        const [newest, ...older] = await practicesOf(transaction, studentId);
        if (newest !== undefined && nextNumber([newest, ...older]) !== number) {
          const same =
            newest.lab === lab &&
            newest.assignmentId === kept.assignmentId &&
            newest.kitId === kept.kitId;
          return newest.status === 'open' && same ? newest : null;
        }
        await transaction.attempt.deleteMany({
          where: { studentId, mode: 'practice', status: 'open' },
        });
        const events = { create: { sequence: 0, kind: 'started', payload: {}, at: now } };
        return transaction.attempt.create({
          data: { ...frozen, ...kept, number, events },
          select: { id: true },
        });
      });
      if (attempt !== null) return success({ attemptId: attempt.id });
    } catch (error) {
      if (!isUniqueViolation(error)) throw error;
    }
  }
  return failure('try-again', 'That did not work. Try again.');
}

const labsWithoutSky = labs.filter((lab) => labOptions[lab].withoutSky === true);

/** The student's latest practices, newest first. */
const practicesOf = (client: Transaction, studentId: string) =>
  client.attempt.findMany({
    where: { studentId, mode: 'practice' },
    orderBy: [{ startedAt: 'desc' }, { number: 'desc' }],
    select: {
      id: true,
      status: true,
      number: true,
      lab: true,
      template: true,
      assignmentId: true,
      kitId: true,
    },
    take: practicesRemembered * labs.length,
  });

const nextNumber = (attempts: readonly { number: number }[]): number =>
  Math.max(0, ...attempts.map(({ number }) => number)) + 1;

/** So many kinds of task of a lab come before one of them comes again. */
const practicesRemembered = 3;

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
  return {
    scenario,
    placeName: defaultPlace.name,
    kitId: kit.id,
  };
}
