import 'server-only';
import type { Viewer } from '../auth/policy';
import { teacherIdOf } from './access';
import type { Clock } from './clock';
import type { Transaction } from './db';
import type { Prisma } from './generated/client';

/** One line of the append-only audit: who, when, what it was, what it became and why. */
export async function writeAudit(
  transaction: Transaction,
  viewer: Viewer,
  entry: {
    classId: string;
    action: string;
    /** What was changed: "student <id>", "mark <student> <assignment>" … */
    subject: string;
    before?: Prisma.InputJsonValue;
    after?: Prisma.InputJsonValue;
    reason?: string;
    /** Of the grader that made the new mark. */
    graderVersion?: number;
  },
  clock: Clock,
): Promise<void> {
  await transaction.audit.create({
    data: { ...entry, teacherId: teacherIdOf(viewer), at: clock.now() },
  });
}
