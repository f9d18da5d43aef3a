import 'server-only';
import { canReadNotes, canTeachClass, type Viewer } from '../auth/policy';
import { classOfAssignment, classOfStudent } from './access';
import {
  attemptOfSubject,
  cellActions,
  cellSubject,
  cellValuesSchema,
  shownValuesSchema,
  type CellAction,
  type CellValues,
  type ShownValues,
} from './cell-audit';
import { holdClass } from './class-in-line';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { failure, notFound, success, type Result } from './result';
import { restore } from './undo-decision';
import { writeAudit } from './audit';

type Cell = { studentId: string; assignmentId: string };

export type TrailLine = {
  id: string;
  /** UTC, ISO 8601. */
  at: string;
  /** Null: of a teacher whose account is gone. */
  who: string | null;
  action: CellAction;
  attemptId: string | null;
  before: ShownValues;
  after: ShownValues;
  reason: string | null;
  graderVersion: number | null;
  /** A later line has undone it. */
  undone: boolean;
};
export type CellTrail = {
  /** Newest first. */
  lines: TrailLine[];
  /** The line that Undo would undo; null where there is none. */
  lastDecisionId: string | null;
};

const trailSelect = {
  id: true,
  at: true,
  teacherId: true,
  action: true,
  subject: true,
  before: true,
  after: true,
  reason: true,
  graderVersion: true,
} as const;

/** The lines about one cell, newest first, with what each did read. */
async function linesOf(client: Transaction, classId: string, cell: Cell) {
  const rows = await client.audit.findMany({
    where: {
      classId,
      subject: { startsWith: cellSubject(cell) },
      action: { in: [...cellActions] },
    },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    select: trailSelect,
  });
  const lines = rows.flatMap((row) => {
    const action = cellActions.find((known) => known === row.action);
    return action === undefined
      ? []
      : [{ ...row, action, before: valuesOf(row.before), after: valuesOf(row.after) }];
  });
  const undone = new Set(lines.flatMap(({ after }) => after.undoes ?? []));
  return lines.map((line) => ({ ...line, undone: undone.has(line.id) }));
}

const valuesOf = (stored: unknown): CellValues => {
  const parsed = cellValuesSchema.safeParse(stored ?? {});
  return parsed.success ? parsed.data : {};
};

const lastDecision = <Line extends { action: CellAction; undone: boolean }>(
  lines: readonly Line[],
): Line | undefined => lines.find(({ action, undone }) => action !== 'undone' && !undone);

/** All that teachers ever did to one cell, for the class's teachers; a substitute does not read notes. */
export async function getCellTrail(viewer: Viewer, cell: Cell): Promise<CellTrail | null> {
  const classId = await classOfStudent(viewer, cell.studentId, canReadNotes);
  if (classId === null) return null;
  const lines = await linesOf(db(), classId, cell);
  const teachers = await db().teacher.findMany({
    where: { id: { in: lines.flatMap(({ teacherId }) => teacherId ?? []) } },
    select: { id: true, displayName: true },
  });
  return {
    lines: lines.map((line) => ({
      id: line.id,
      at: line.at.toISOString(),
      who: teachers.find(({ id }) => id === line.teacherId)?.displayName ?? null,
      action: line.action,
      attemptId: attemptOfSubject(line.subject),
      before: shownValuesSchema.parse(line.before),
      after: shownValuesSchema.parse(line.after),
      reason: line.reason,
      graderVersion: line.graderVersion,
      undone: line.undone,
    })),
    lastDecisionId: lastDecision(lines)?.id ?? null,
  };
}

/**
 * Puts back what was there before the cell's last decision, which must be the one named: a colleague's
 * later one is not undone unseen. The line stays and another tells of the undoing.
 */
export async function undoLastDecision(
  viewer: Viewer,
  input: Cell & { auditId: string },
  clock: Clock = systemClock,
): Promise<Result<{ action: CellAction }>> {
  const { studentId, assignmentId, auditId } = input;
  const classId = await classOfStudent(viewer, studentId, canTeachClass);
  if (
    classId === null ||
    classId !== (await classOfAssignment(viewer, assignmentId, canTeachClass))
  )
    return notFound();
  const cell = { studentId, assignmentId };
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    const last = lastDecision(await linesOf(transaction, classId, cell));
    if (last === undefined) return failure('nothing-to-undo', 'Nothing is left to undo here.');
    if (last.id !== auditId) return changedMeanwhile();
    const attemptId = attemptOfSubject(last.subject);
    const restored = await restore(transaction, { ...last, ...cell, attemptId }, clock.now());
    if (restored === 'newer-attempt')
      return failure(
        'newer-attempt',
        'A newer attempt has been started: giving back can no longer be undone.',
      );
    if (restored === 'changed') return changedMeanwhile();
    await writeAudit(
      transaction,
      viewer,
      {
        classId,
        action: 'undone',
        subject: last.subject,
        before: shownValuesSchema.parse(last.after),
        after: {
          ...shownValuesSchema.parse(last.before),
          undoes: last.id,
          undoneAction: last.action,
        },
      },
      clock,
    );
    return success({ action: last.action });
  });
}

const changedMeanwhile = () =>
  failure(
    'changed-meanwhile',
    'This has been changed in the meantime. Close this and look at the newest line.',
  );
