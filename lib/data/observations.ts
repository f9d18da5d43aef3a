import 'server-only';
import { z } from 'zod';
import { canTeachClass, type Viewer } from '../auth/policy';
import { eveningOf } from '../mastery/evening';
import {
  meetEarlier,
  outgoingSchema,
  type KnownNote,
  type OutgoingAnswer,
  type OutgoingNote,
  type TakeBack,
} from '../mastery/sign-off-note';
import { classAccessSelect } from './access';
import { writeAudit } from './audit';
import { holdClass } from './class-in-line';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { isUniqueViolation } from './is-unique-violation';
import { observationSelect, readObservation, type ReadObservation } from './observation-rows';
import { observedAtOf } from './observations-time';
import { failure, notFound, success, type Result } from './result';

export { signedOffSkills } from './sign-off-standings';

const mostAtOnce = 500;

type Teacher = Extract<Viewer, { kind: 'teacher' }>;
type Context = {
  viewer: Teacher;
  classId: string;
  timeZone: string;
  /** May take back what a colleague noted, too. */
  owns: boolean;
  clock: Clock;
};

const asKnown = (row: ReadObservation, viewer: Teacher): KnownNote => {
  const { key, studentId, skill, level, gates, prompts, note, evening } = row;
  const said = { key, studentId, skill, level, gates, prompts, note };
  return { ...said, evening, mine: row.assessorId === viewer.teacherId };
};

/** Whatever was sent, a refusal can be told only of something that has a key. */
const keyedSchema = z.object({ key: z.string().regex(/^[0-9a-f]{32}$/) });

/**
 * Keeps what a device sends: notes and what is taken back, in their order, each once however often it
 * arrives. One that cannot be kept hinders none of the others, and each is answered by itself.
 */
export async function recordObservations(
  viewer: Viewer,
  classId: string,
  sent: unknown,
  clock: Clock = systemClock,
): Promise<Result<OutgoingAnswer[]>> {
  const schoolClass = await db().class.findUnique({
    where: { id: classId },
    select: { ...classAccessSelect, timeZone: true },
  });
  if (schoolClass === null || !canTeachClass(viewer, schoolClass)) return notFound();
  if (viewer.kind !== 'teacher') return notFound();
  const list = z.array(z.unknown()).max(mostAtOnce).safeParse(sent);
  if (!list.success) {
    return failure('bad-input', `Send a list of at most ${mostAtOnce} notes at once.`);
  }
  const { timeZone, members } = schoolClass;
  const owns = members.some(
    ({ teacherId, role }) => teacherId === viewer.teacherId && role === 'owner',
  );
  const context = { viewer, classId, timeZone, owns, clock };
  const answers: OutgoingAnswer[] = [];
  for (const one of list.data) {
    const parsed = outgoingSchema.safeParse(one);
    if (parsed.success) {
      answers.push(await keep(context, parsed.data));
      continue;
    }
    const keyed = keyedSchema.safeParse(one);
    if (!keyed.success) return failure('bad-input', 'A note without its number arrived.');
    answers.push(refusedNote(keyed.data.key, 'This note cannot be read. Write it once more.'));
  }
  return success(answers);
}

const refusedNote = (key: string, message: string): OutgoingAnswer => ({
  outcome: 'refused',
  key,
  message,
});

async function keep(context: Context, one: OutgoingNote | TakeBack): Promise<OutgoingAnswer> {
  try {
    return await db().$transaction(async (transaction) => {
      await holdClass(transaction, context.classId);
      return one.kind === 'note'
        ? keepNote(transaction, context, one)
        : takeBack(transaction, context, one);
    });
  } catch (error) {
    // The same note twice at the same instant: the other one has just been stored.
    if (!isUniqueViolation(error) || one.kind !== 'note') throw error;
    return db().$transaction((transaction) => keepNote(transaction, context, one));
  }
}

async function keepNote(
  transaction: Transaction,
  context: Context,
  note: OutgoingNote,
): Promise<OutgoingAnswer> {
  const { viewer, classId, timeZone, clock } = context;
  const { key, studentId, skill } = note;
  const there = await transaction.observation.findUnique({
    where: { key },
    select: { ...observationSelect, retractedAt: true, student: { select: { classId: true } } },
  });
  if (there !== null) {
    if (there.student.classId !== classId || there.assessorId !== viewer.teacherId) {
      return refusedNote(key, 'The number of this note is taken. Write it once more.');
    }
    const gone = there.retractedAt !== null;
    const known = gone ? null : asKnown(readObservation(there, timeZone), viewer);
    return { outcome: 'already-there', key, known };
  }
  const student = await transaction.student.findFirst({
    where: { id: studentId, classId },
    select: { id: true },
  });
  if (student === null) return refusedNote(key, 'This student is no longer in the class.');
  const now = clock.now();
  const time = observedAtOf(note, timeZone, now);
  if (typeof time === 'string') return refusedNote(key, time);

  const evening = eveningOf(time, timeZone, note.conditions.light);
  const rows = await transaction.observation.findMany({
    where: { studentId, skill, retractedAt: null },
    orderBy: [{ receivedAt: 'asc' }, { id: 'asc' }],
    select: observationSelect,
  });
  const thatEvening = rows
    .map((row) => readObservation(row, timeZone))
    .filter((row) => row.evening === evening);
  const earlier = thatEvening.filter(({ assessorId }) => assessorId === viewer.teacherId);
  const met = meetEarlier(note, earlier);
  if (met.kind === 'same') {
    return { outcome: 'already-there', key, known: asKnown(met.as, viewer) };
  }
  if (met.kind === 'conflict') {
    return { outcome: 'conflict', key, existing: met.with.map((row) => asKnown(row, viewer)) };
  }
  const { level, gates, prompts, instrument, conditions } = note;
  const said = { studentId, skill, level, gates, prompts, note: note.note, instrument, conditions };
  const row = await transaction.observation.create({
    data: { ...said, key, observedAt: time, receivedAt: now, assessorId: viewer.teacherId },
    select: observationSelect,
  });
  for (const old of met.replaces) {
    const reason = 'replaced by a later note of the same evening';
    await retract(transaction, context, old, { at: now, reason });
  }
  const known = asKnown(readObservation(row, timeZone), viewer);
  const colleagues = thatEvening
    .filter(({ assessorId }) => assessorId !== viewer.teacherId)
    .map((one) => asKnown(one, viewer));
  return { outcome: 'stored', key, known, gone: met.replaces.map((old) => old.key), colleagues };
}

async function retract(
  transaction: Transaction,
  { viewer, classId, clock }: Context,
  { id, studentId, skill, level, gates }: ReadObservation,
  { at, reason }: { at: Date; reason: string },
): Promise<void> {
  await transaction.observation.update({ where: { id }, data: { retractedAt: at } });
  const subject = `observation ${studentId} ${skill}`;
  const entry = { classId, action: 'observation-taken-back', subject, before: { level, gates } };
  await writeAudit(transaction, viewer, { ...entry, reason }, clock);
}

/**
 * An assessor takes back their own, the owner of the class anybody's; it is kept for the trail. Brought back
 * is only what this very note took the place of: not what has been taken back or replaced otherwise since.
 */
async function takeBack(
  transaction: Transaction,
  context: Context,
  { key, restores }: TakeBack,
): Promise<OutgoingAnswer> {
  const { viewer, classId, timeZone, owns, clock } = context;
  const mine = owns ? {} : { assessorId: viewer.teacherId };
  const row = await transaction.observation.findFirst({
    where: { key, retractedAt: null, student: { classId }, ...mine },
    select: observationSelect,
  });
  // It never arrived, or was taken back or replaced before: then all is as it should be.
  if (row !== null) {
    const undone = { at: clock.now(), reason: 'undone' };
    await retract(transaction, context, readObservation(row, timeZone), undone);
    const { studentId, skill, assessorId, receivedAt } = row;
    const replaced = await transaction.observation.findMany({
      where: {
        key: { in: restores, not: key },
        studentId,
        skill,
        assessorId,
        // The instant that keepNote wrote down for both.
        retractedAt: receivedAt,
      },
      select: observationSelect,
    });
    for (const { id, level, gates } of replaced) {
      await transaction.observation.update({ where: { id }, data: { retractedAt: null } });
      const subject = `observation ${studentId} ${skill}`;
      const after = { level, gates: gates ?? [] };
      const entry = { classId, action: 'observation-brought-back', subject, after };
      await writeAudit(transaction, viewer, entry, clock);
    }
  }
  // Also what an undo whose answer was lost has brought back before.
  const back = await transaction.observation.findMany({
    where: { key: { in: restores }, retractedAt: null, student: { classId }, ...mine },
    select: observationSelect,
  });
  const known = back.map((one) => asKnown(readObservation(one, timeZone), viewer));
  return { outcome: 'taken-back', key, back: known };
}
