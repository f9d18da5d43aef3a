import 'server-only';
import { hashSecret, newCardWords } from '../auth/passwords';
import { canIssueCard, type Viewer } from '../auth/policy';
import { classOfStudent, mayWithClass } from './access';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { notFound, success, type Result } from './result';
import { logSecurityEvent } from './security-log';

/** What a student types to get in; shown on the screen once, the words are not kept. */
export type ScreenCard = {
  displayName: string;
  cardNumber: number;
  words: string;
  classCode: string;
};

/** Who can be let in: names and card numbers of those who are in the class, nothing else of them. */
export async function listToLetIn(
  viewer: Viewer,
  classId: string,
): Promise<{ studentId: string; displayName: string; cardNumber: number }[] | null> {
  if (!(await mayWithClass(viewer, classId, canIssueCard))) return null;
  const students = await db().student.findMany({
    where: { classId, leftAt: null },
    orderBy: { cardNumber: 'asc' },
    select: { id: true, displayName: true, cardNumber: true },
  });
  return students.map(({ id, ...student }) => ({ studentId: id, ...student }));
}

/**
 * New words for one student who cannot get in. The old card stops working and the student's sessions
 * end. The audit says when a substitute did it.
 */
export async function letStudentIn(
  viewer: Viewer,
  studentId: string,
  clock: Clock = systemClock,
): Promise<Result<ScreenCard>> {
  const classId = await classOfStudent(viewer, studentId, canIssueCard);
  if (classId === null) return notFound();
  const words = newCardWords();
  const secretHash = await hashSecret(words);
  const student = await db().$transaction(async (transaction) => {
    const { count } = await transaction.student.updateMany({
      where: { id: studentId, leftAt: null },
      data: { secretHash },
    });
    if (count === 0) return null;
    await transaction.session.updateMany({
      where: { studentId, endedAt: null },
      data: { endedAt: clock.now() },
    });
    const entry = {
      classId,
      action: 'student-let-in',
      subject: `student ${studentId}`,
      ...(viewer.kind === 'cover' ? { after: { coverLink: viewer.coverId } } : {}),
    };
    await writeAudit(transaction, viewer, entry, clock);
    return transaction.student.findUniqueOrThrow({
      where: { id: studentId },
      select: { displayName: true, cardNumber: true, class: { select: { code: true } } },
    });
  });
  if (student === null) return notFound();
  await logSecurityEvent('cards-issued', classId, clock);
  return success({
    displayName: student.displayName,
    cardNumber: student.cardNumber,
    words: words.replaceAll('-', ' '),
    classCode: student.class.code,
  });
}
