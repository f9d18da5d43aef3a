import 'server-only';
import { z } from 'zod';
import { canTeachClass, type Viewer } from '../auth/policy';
import type { Lab } from '../variants/labs';
import { classOfAssignment } from './access';
import { writeAudit } from './audit';
import { cellSubject } from './cell-audit';
import { holdClass } from './class-in-line';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { replay, type RegradeChange } from './regrade-replay';
import { failure, notFound, success, type Result } from './result';

export type { RegradeChange } from './regrade-replay';

type Whose = {
  studentId: string;
  displayName: string;
  cardNumber: number;
  lab: Lab;
  attemptNumber: number;
  /** The teacher's own mark, which stands whatever the regrade says; null: none. */
  markByHand: number | null;
};
export type RegradePreview = {
  assignment: { id: string; title: string; classId: string; className: string };
  /** How many pieces of work were marked anew. */
  replayed: number;
  /** Lowered ones last. */
  changes: (RegradeChange & Whose)[];
  /** Work that today's grader cannot mark: its mark stays. */
  refused: { attemptId: string; displayName: string; attemptNumber: number; message: string }[];
};

const loadAttempts = (assignmentId: string) =>
  db().attempt.findMany({
    where: { assignmentId, mode: 'check', status: 'submitted' },
    orderBy: [{ student: { cardNumber: 'asc' } }, { number: 'asc' }],
    select: {
      id: true,
      number: true,
      student: { select: { id: true, displayName: true, cardNumber: true } },
    },
  });

const order: readonly RegradeChange['kind'][] = ['raised', 'elsewhere', 'lowered'];

/** What would become of all marks of an assignment with today's graders; changes nothing. */
export async function previewRegrade(
  viewer: Viewer,
  assignmentId: string,
): Promise<RegradePreview | null> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return null;
  const [assignment, attempts] = await Promise.all([
    db().assignment.findUniqueOrThrow({
      where: { id: assignmentId },
      select: {
        title: true,
        class: { select: { name: true } },
        overrides: { select: { studentId: true, mark: true } },
      },
    }),
    loadAttempts(assignmentId),
  ]);
  const changes: RegradePreview['changes'] = [];
  const refused: RegradePreview['refused'] = [];
  // One after another: a long log and its result are let go of before the next is read.
  for (const { id: attemptId, number, student } of attempts) {
    const replayed = await replay(attemptId);
    const { id: studentId, displayName, cardNumber } = student;
    if (replayed.kind === 'refused')
      refused.push({ attemptId, displayName, attemptNumber: number, message: replayed.message });
    if (replayed.kind === 'changed') {
      const byHand = assignment.overrides.find((one) => one.studentId === studentId);
      changes.push({
        ...replayed.change,
        studentId,
        displayName,
        cardNumber,
        lab: replayed.lab,
        attemptNumber: number,
        markByHand: byHand?.mark ?? null,
      });
    }
  }
  return {
    assignment: {
      id: assignmentId,
      title: assignment.title,
      classId,
      className: assignment.class.name,
    },
    replayed: attempts.length,
    changes: order.flatMap((kind) => changes.filter((change) => change.kind === kind)),
    refused,
  };
}

const ids = z.array(z.string().max(100)).max(20_000);
const inputSchema = z.strictObject({
  assignmentId: z.string().max(100),
  /** What may be taken over where it lowers nothing. */
  accepted: ids,
  /** What may be taken over although it lowers a mark: the teacher has ticked each. */
  lowered: ids,
});

export type Regraded = { changed: number; notLowered: number };

/**
 * Replays the named attempts once more and writes the marks that differ: a new row by a newer grader;
 * by the same grader the row is replaced and the old one kept whole in the audit. Never lowers what
 * was not ticked for that, and never touches a mark set by hand.
 */
export async function acceptRegrade(
  viewer: Viewer,
  input: { assignmentId: string; accepted: readonly string[]; lowered: readonly string[] },
  clock: Clock = systemClock,
): Promise<Result<Regraded>> {
  const parsed = inputSchema.safeParse(input);
  if (!parsed.success) return notFound();
  const { assignmentId, accepted, lowered } = parsed.data;
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return notFound();
  if (accepted.length + lowered.length === 0)
    return failure('nothing-chosen', 'Tick the marks to take over. Nothing was changed.');
  const chosen = new Set([...accepted, ...lowered]);
  const mayLower = new Set(lowered);
  const said: Regraded = { changed: 0, notLowered: 0 };
  for (const { id: attemptId, student } of await loadAttempts(assignmentId)) {
    if (!chosen.has(attemptId)) continue;
    const replayed = await replay(attemptId);
    if (replayed.kind !== 'changed') continue;
    if (replayed.change.kind === 'lowered' && !mayLower.has(attemptId)) said.notLowered += 1;
    else {
      const cell = { classId, studentId: student.id, assignmentId, attemptId };
      said.changed += await writeMark(viewer, cell, replayed, clock);
    }
  }
  return success(said);
}

/** 1 when it was written, 0 when the mark has changed in the meantime. */
async function writeMark(
  viewer: Viewer,
  cell: { classId: string; studentId: string; assignmentId: string; attemptId: string },
  { change, stored, result }: Extract<Awaited<ReturnType<typeof replay>>, { kind: 'changed' }>,
  clock: Clock,
): Promise<number> {
  const { classId, attemptId } = cell;
  const { old, now } = change;
  const { graderVersion, total, gateFailed } = now;
  const replaces = old?.graderVersion === graderVersion;
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    const newest = await transaction.mark.findFirst({
      where: { attemptId },
      orderBy: { graderVersion: 'desc' },
      select: { graderVersion: true, total: true, gateFailed: true },
    });
    if (newest?.graderVersion !== old?.graderVersion || newest?.total !== old?.total) return 0;
    const data = { total, gateFailed, result, gradedAt: clock.now() };
    await transaction.mark.upsert({
      where: { attemptId_graderVersion: { attemptId, graderVersion } },
      create: { attemptId, graderVersion, ...data },
      update: data,
    });
    await writeAudit(
      transaction,
      viewer,
      {
        classId,
        action: 'regraded',
        subject: cellSubject(cell),
        graderVersion,
        before: { ...(old ?? {}), ...(replaces ? { result: stored?.result ?? null } : {}) },
        after: now,
      },
      clock,
    );
    return 1;
  });
}
