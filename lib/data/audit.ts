import 'server-only';
import { randomBytes } from 'node:crypto';
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
  const at = clock.now();
  await transaction.audit.create({
    data: { ...entry, id: auditId(at), teacherId: teacherIdOf(viewer), at },
  });
}

let written = 0;
const mostWritten = 0x1000000;

/**
 * Sorts by time, and within a millisecond by what this process wrote first: which decision was the last
 * must not be chance. A UUID of version 7 (RFC 9562, 5.7) with a counter of 24 bits after the time (6.2).
 */
function auditId(at: Date): string {
  const time = at.getTime().toString(16).padStart(12, '0');
  const count = (written % mostWritten).toString(16).padStart(6, '0');
  written += 1;
  const node = randomBytes(6).toString('hex');
  return `${time.slice(0, 8)}-${time.slice(8)}-7${count.slice(0, 3)}-8${count.slice(3)}-${node}`;
}
