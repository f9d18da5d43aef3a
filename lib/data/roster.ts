import 'server-only';
import { hashSecret, newCardWords } from '../auth/passwords';
import { canSeeClass, canTakeFromClass, canTeachClass, type Viewer } from '../auth/policy';
import { mostStudents } from '../roster/student-name';
import { classOfStudent, mayWithClass } from './access';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { readExtraTime } from './extra-time';
import type { ExtraTime } from './extra-time-input';
import { firstMessage } from './names';
import { failure, notFound, success, type Result } from './result';
import { logSecurityEvent } from './security-log';
import { forgetStudents } from './student-forgetting';
import { studentNameSchema } from './student-name';

export { setExtraAttempts, setExtraTime } from './accommodations';
export { exportStudent } from './student-export';
export { setLeft } from './student-leaving';

export type RosterRow = {
  studentId: string;
  cardNumber: number;
  displayName: string;
  hasCard: boolean;
  /** When the student left the class; null: is here. UTC, ISO 8601. */
  leftAt: string | null;
  /**
   * When the student last did something here: signed in and looked, or began or handed in an attempt.
   * Sign-ins are forgotten in time, work is not. UTC, ISO 8601.
   */
  lastSeenAt: string | null;
  /** 0 to an observer: accommodations are the teachers' business. */
  extraAttempts: number;
  extraTime: ExtraTime;
};
/** Printed once: the words are not kept. */
export type SignInCard = {
  studentId: string;
  displayName: string;
  cardNumber: number;
  words: string;
  classCode: string;
  className: string;
};

/** In the order of their cards; those who left come last. */
export async function listRoster(viewer: Viewer, classId: string): Promise<RosterRow[] | null> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return null;
  const seesAccommodations = await mayWithClass(viewer, classId, canTakeFromClass);
  const students = await db().student.findMany({
    where: { classId },
    orderBy: { cardNumber: 'asc' },
    select: {
      id: true,
      cardNumber: true,
      displayName: true,
      secretHash: true,
      leftAt: true,
      accommodation: { select: { extraAttempts: true, extraTime: true } },
      sessions: { select: { lastSeenAt: true }, orderBy: { lastSeenAt: 'desc' }, take: 1 },
    },
  });
  const work = await db().attempt.groupBy({
    by: ['studentId'],
    where: { student: { classId } },
    _max: { startedAt: true, submittedAt: true },
  });
  const inOrder = [
    ...students.filter(({ leftAt }) => leftAt === null),
    ...students.filter(({ leftAt }) => leftAt !== null),
  ];
  return inOrder.map((student) => ({
    studentId: student.id,
    cardNumber: student.cardNumber,
    displayName: student.displayName,
    hasCard: student.secretHash !== null,
    leftAt: student.leftAt?.toISOString() ?? null,
    lastSeenAt: latest(
      student.sessions.map(({ lastSeenAt }) => lastSeenAt),
      work
        .filter(({ studentId }) => studentId === student.id)
        .flatMap(({ _max: { startedAt, submittedAt } }) => [startedAt, submittedAt]),
    ),
    extraAttempts: seesAccommodations ? (student.accommodation?.extraAttempts ?? 0) : 0,
    extraTime: seesAccommodations ? readExtraTime(student.accommodation?.extraTime) : 'none',
  }));
}

function latest(...moments: readonly (readonly (Date | null)[])[]): string | null {
  const times = moments.flat().flatMap((moment) => moment?.getTime() ?? []);
  return times.length === 0 ? null : new Date(Math.max(...times)).toISOString();
}

/** All or none. Two students may share a name: the card number tells them apart. */
export async function addStudents(
  viewer: Viewer,
  classId: string,
  names: readonly string[],
): Promise<Result<{ added: number; studentIds: string[] }>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  if (names.length === 0) return failure('bad-input', 'There is no name to add.', 'names');
  const displayNames: string[] = [];
  for (const [index, name] of names.entries()) {
    const parsed = studentNameSchema.safeParse(name);
    if (!parsed.success) {
      return failure(
        'bad-input',
        `Line ${index + 1}: ${firstMessage(parsed.error)}`,
        `names.${index}`,
      );
    }
    displayNames.push(parsed.data);
  }
  return db().$transaction(async (transaction) => {
    const there = await transaction.student.count({ where: { classId, leftAt: null } });
    if (there + displayNames.length > mostStudents) {
      return failure('too-many', `A class holds at most ${mostStudents} students.`, 'names');
    }
    const { nextCardNumber } = await transaction.class.update({
      where: { id: classId },
      data: { nextCardNumber: { increment: displayNames.length } },
      select: { nextCardNumber: true },
    });
    const first = nextCardNumber - displayNames.length;
    const students = await transaction.student.createManyAndReturn({
      data: displayNames.map((displayName, index) => ({
        classId,
        displayName,
        cardNumber: first + index,
      })),
      select: { id: true },
    });
    return success({ added: students.length, studentIds: students.map(({ id }) => id) });
  });
}

export async function renameStudent(
  viewer: Viewer,
  studentId: string,
  name: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfStudent(viewer, studentId, canTeachClass);
  if (classId === null) return notFound();
  const parsed = studentNameSchema.safeParse(name);
  if (!parsed.success) return failure('bad-input', firstMessage(parsed.error), 'name');
  await db().$transaction(async (transaction) => {
    await transaction.student.update({
      where: { id: studentId },
      data: { displayName: parsed.data },
    });
    // Neither name is kept: the old one may have been changed so that it is forgotten.
    const entry = { classId, action: 'student-renamed', subject: `student ${studentId}` };
    await writeAudit(transaction, viewer, entry, clock);
  });
  return success(null);
}

/** Deletes the student with all attempts, marks and sessions. */
export async function removeStudent(
  viewer: Viewer,
  studentId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfStudent(viewer, studentId, canTeachClass);
  if (classId === null) return notFound();
  await db().$transaction(async (transaction) => {
    await forgetStudents(transaction, classId, [studentId]);
    await writeAudit(
      transaction,
      viewer,
      { classId, action: 'student-removed', subject: 'student' },
      clock,
    );
  });
  return success(null);
}

/** New secrets, for those who are here; the old ones and every session opened with them end. */
export async function issueCards(
  viewer: Viewer,
  classId: string,
  which: readonly string[] | 'all' | 'without-card',
  clock: Clock = systemClock,
): Promise<Result<SignInCard[]>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const chosen =
    which === 'all'
      ? {}
      : which === 'without-card'
        ? { secretHash: null }
        : { id: { in: [...which] } };
  const students = await db().student.findMany({
    where: { classId, leftAt: null, ...chosen },
    orderBy: { cardNumber: 'asc' },
    select: {
      id: true,
      displayName: true,
      cardNumber: true,
      class: { select: { code: true, name: true } },
    },
  });
  if (Array.isArray(which) && students.length !== new Set(which).size) return notFound();
  const secrets = await Promise.all(
    students.map(async ({ id }) => {
      const words = newCardWords();
      return { id, words, hash: await hashSecret(words) };
    }),
  );
  await db().$transaction(async (transaction) => {
    for (const { id, hash } of secrets) {
      await transaction.student.update({ where: { id }, data: { secretHash: hash } });
    }
    await transaction.session.updateMany({
      where: { studentId: { in: secrets.map(({ id }) => id) }, endedAt: null },
      data: { endedAt: clock.now() },
    });
    // How many, not whose: nothing here to erase when a student goes.
    const after = { cards: secrets.length };
    const entry = { classId, action: 'cards-issued', subject: `class ${classId}`, after };
    await writeAudit(transaction, viewer, entry, clock);
  });
  await logSecurityEvent('cards-issued', classId, clock);
  const wordsOf = new Map(secrets.map(({ id, words }) => [id, words]));
  return success(
    students.map((student) => ({
      studentId: student.id,
      displayName: student.displayName,
      cardNumber: student.cardNumber,
      words: (wordsOf.get(student.id) ?? '').replaceAll('-', ' '),
      classCode: student.class.code,
      className: student.class.name,
    })),
  );
}
