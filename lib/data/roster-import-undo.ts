import 'server-only';
import { canTeachClass, type Viewer } from '../auth/policy';
import { mayWithClass } from './access';
import { writeAudit } from './audit';
import { holdClass } from './class-in-line';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { failure, notFound, success, type Result } from './result';
import { importUndoSchema, type ImportUndo } from './roster-import-input';
import { forgetStudents } from './student-forgetting';

/**
 * Takes an import back: the new students go, names and standing are as before. Refused, with nothing
 * changed, once one of the new ones has worked, something was set for one of them (a group, more time), or
 * the roster was changed again. Sessions that ended
 * stay ended, and card numbers are not given out anew.
 */
export async function takeBackImport(
  viewer: Viewer,
  classId: string,
  input: unknown,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const parsed = importUndoSchema.safeParse(input);
  if (!parsed.success) return failure('bad-input', 'This import cannot be taken back any more.');
  const undo = parsed.data;
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    const worked = await transaction.student.count({
      where: {
        classId,
        id: { in: undo.added },
        OR: [
          { attempts: { some: {} } },
          { questions: { some: {} } },
          { observations: { some: {} } },
          { overrides: { some: {} } },
          { extensions: { some: {} } },
          { groups: { some: {} } },
          { accommodation: { isNot: null } },
        ],
      },
    });
    if (worked > 0) {
      return failure(
        'has-worked',
        `${worked} of the new students ${worked === 1 ? 'has' : 'have'} work, a group or more time here already, so the import stays. Mark those who are wrong here as left.`,
      );
    }
    if (!(await isAsImported(transaction, classId, undo))) {
      return failure(
        'roster-changed',
        'The roster has changed since the import, so it cannot be taken back as a whole. Change single students instead.',
      );
    }
    await forgetStudents(transaction, classId, undo.added);
    const set = (ids: readonly string[], data: { leftAt?: Date | null; sourcedId?: null }) =>
      transaction.student.updateMany({ where: { classId, id: { in: [...ids] } }, data });
    await set(undo.left, { leftAt: null });
    await set(undo.learnedId, { sourcedId: null });
    for (const { studentId, leftAt } of undo.back) {
      await set([studentId], { leftAt: new Date(leftAt) });
      await transaction.session.updateMany({
        where: { student: { classId, id: studentId }, endedAt: null },
        data: { endedAt: clock.now() },
      });
    }
    for (const { studentId, from } of undo.renamed) {
      const where = { classId, id: studentId };
      await transaction.student.updateMany({ where, data: { displayName: from } });
    }
    await transaction.class.update({
      where: { id: classId },
      data: { sourcedId: undo.classSourcedId.from },
    });
    const after = { removed: undo.added.length };
    const entry = {
      classId,
      action: 'roster-import-taken-back',
      subject: `class ${classId}`,
      after,
    };
    await writeAudit(transaction, viewer, entry, clock);
    return success(null);
  });
}

async function isAsImported(
  transaction: Transaction,
  classId: string,
  undo: ImportUndo,
): Promise<boolean> {
  const { sourcedId, students } = await transaction.class.findUniqueOrThrow({
    where: { id: classId },
    select: {
      sourcedId: true,
      students: { select: { id: true, displayName: true, leftAt: true, sourcedId: true } },
    },
  });
  const now = new Map(students.map((student) => [student.id, student]));
  return (
    sourcedId === undo.classSourcedId.to &&
    undo.added.every((id) => now.has(id)) &&
    undo.left.every((id) => now.get(id)?.leftAt instanceof Date) &&
    undo.learnedId.every((id) => typeof now.get(id)?.sourcedId === 'string') &&
    undo.back.every(({ studentId }) => now.get(studentId)?.leftAt === null) &&
    undo.renamed.every(({ studentId, to }) => now.get(studentId)?.displayName === to)
  );
}
