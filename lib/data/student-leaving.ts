import 'server-only';
import { canTeachClass, type Viewer } from '../auth/policy';
import { mostStudents } from '../roster/student-name';
import { classOfStudent } from './access';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { failure, notFound, success, type Result } from './result';

/**
 * Has left, or is back. Who has left cannot sign in, and is signed out at once; the work is kept, and
 * the card works again when the student is back.
 */
export async function setLeft(
  viewer: Viewer,
  studentId: string,
  left: boolean,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfStudent(viewer, studentId, canTeachClass);
  if (classId === null) return notFound();
  return db().$transaction(async (transaction) => {
    if (!left) {
      const others = await transaction.student.count({
        where: { classId, leftAt: null, id: { not: studentId } },
      });
      if (others >= mostStudents) {
        return failure('too-many', `A class holds at most ${mostStudents} students.`);
      }
    }
    // Left twice: the first time counts.
    const { count } = await transaction.student.updateMany({
      where: { id: studentId, leftAt: left ? null : { not: null } },
      data: { leftAt: left ? clock.now() : null },
    });
    if (count === 0) return success(null);
    if (left) {
      await transaction.session.updateMany({
        where: { studentId, endedAt: null },
        data: { endedAt: clock.now() },
      });
    }
    const entry = {
      classId,
      action: left ? 'student-left' : 'student-back',
      subject: `student ${studentId}`,
    };
    await writeAudit(transaction, viewer, entry, clock);
    return success(null);
  });
}
