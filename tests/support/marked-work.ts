import { submitAttempt } from '@/lib/data/attempts';
import { db } from '@/lib/data/db';
import type { Viewer } from '@/lib/auth/policy';
import { answerFor, monday, started, valueOf } from './school';

/** A submitted attempt, marked by today's grader. */
export async function handedIn(
  student: Viewer,
  assignmentId: string,
  clock = monday,
): Promise<string> {
  const attemptId = await started(student, assignmentId);
  const submission = await answerFor(attemptId, 'best');
  const input = { submission, idempotencyKey: `key-${attemptId}` };
  valueOf(await submitAttempt(student, attemptId, input, clock));
  return attemptId;
}

/** The newest mark of an attempt. */
export const newestMark = (attemptId: string) =>
  db().mark.findFirstOrThrow({
    where: { attemptId },
    orderBy: { graderVersion: 'desc' },
    select: { graderVersion: true, total: true, gateFailed: true, result: true },
  });
