import 'server-only';
import type { Transaction } from './db';

/**
 * Deletes students of the class with all that hangs on them, and what audit and security log say of
 * them: a deleted child leaves no trace.
 */
export async function forgetStudents(
  transaction: Transaction,
  classId: string,
  studentIds: readonly string[],
): Promise<void> {
  for (const studentId of studentIds) {
    await transaction.student.deleteMany({ where: { id: studentId, classId } });
    await transaction.audit.deleteMany({ where: { classId, subject: { contains: studentId } } });
    await transaction.securityEvent.deleteMany({ where: { subject: studentId } });
  }
}
