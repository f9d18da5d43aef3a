import 'server-only';
import { createHash } from 'node:crypto';
import { canTeachClass, type Viewer } from '../auth/policy';
import {
  countChanges,
  planRoster,
  type PresentStudent,
  type RosterChange,
  type RosterCounts,
} from '../roster/plan-roster';
import { mostStudents } from '../roster/student-name';
import { mayWithClass } from './access';
import { writeAudit } from './audit';
import { holdClass } from './class-in-line';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { firstMessage } from './names';
import { failure, notFound, success, type Result } from './result';
import { rosterListSchema, type ImportUndo, type RosterList } from './roster-import-input';
import { studentNameSchema } from './student-name';

export { takeBackImport } from './roster-import-undo';

export type RosterPreview = {
  changes: RosterChange[];
  counts: RosterCounts;
  /** Stands for exactly these changes; the import does them or nothing. */
  fingerprint: string;
  /** The class was filled from another class of the school's file before. */
  fromAnotherClass: boolean;
};
export type ImportOutcome = { counts: RosterCounts; undo: ImportUndo };

/** The id of the class in the school's file that it was last filled from; null for others, and for none. */
export async function getRosterSource(viewer: Viewer, classId: string): Promise<string | null> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return null;
  const found = await db().class.findUnique({
    where: { id: classId },
    select: { sourcedId: true },
  });
  return found?.sourcedId ?? null;
}

/** What importing this list would do; nothing changes. */
export async function previewRoster(
  viewer: Viewer,
  classId: string,
  input: unknown,
): Promise<Result<RosterPreview>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const list = readList(input);
  if (!list.ok) return list;
  const plan = await db().$transaction((transaction) => planFor(transaction, classId, list.value));
  if (!plan.ok) return plan;
  const { changes, fingerprint, sourcedId } = plan.value;
  return success({
    changes,
    counts: countChanges(changes),
    fingerprint,
    fromAnotherClass:
      sourcedId !== null &&
      list.value.classSourcedId !== null &&
      sourcedId !== list.value.classSourcedId,
  });
}

/** Does what the preview with this fingerprint showed, all of it or nothing. */
export async function commitRoster(
  viewer: Viewer,
  classId: string,
  input: unknown,
  fingerprint: string,
  clock: Clock = systemClock,
): Promise<Result<ImportOutcome>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const list = readList(input);
  if (!list.ok) return list;
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    const plan = await planFor(transaction, classId, list.value);
    if (!plan.ok) return plan;
    if (plan.value.fingerprint !== fingerprint) {
      return failure(
        'roster-changed',
        'The roster has changed since the preview. Nothing was imported; look at the preview again.',
      );
    }
    const { changes, leftAt } = plan.value;
    const now = clock.now();
    const added = await addAll(transaction, classId, changes);
    const undo: ImportUndo = {
      added,
      left: [],
      learnedId: [],
      back: [],
      renamed: [],
      classSourcedId: { from: plan.value.sourcedId, to: plan.value.sourcedId },
    };
    for (const change of changes) {
      if (change.kind === 'add' || change.kind === 'untouched') continue;
      if (change.kind === 'leave') {
        undo.left.push(change.studentId);
        continue;
      }
      const { studentId, kind, was, name, learnsId, sourcedId } = change;
      if (learnsId) undo.learnedId.push(studentId);
      if (kind === 'back') {
        undo.back.push({ studentId, leftAt: (leftAt.get(studentId) ?? now).toISOString() });
      }
      if (name !== was) undo.renamed.push({ studentId, from: was, to: name });
      if (!learnsId && kind !== 'back' && name === was) continue;
      await transaction.student.update({
        where: { id: studentId },
        data: { displayName: name, leftAt: null, ...(learnsId ? { sourcedId } : {}) },
      });
    }
    const gone = { studentId: { in: undo.left }, endedAt: null };
    await transaction.student.updateMany({
      where: { id: { in: undo.left } },
      data: { leftAt: now },
    });
    await transaction.session.updateMany({ where: gone, data: { endedAt: now } });
    if (list.value.classSourcedId !== null) {
      undo.classSourcedId.to = list.value.classSourcedId;
      await transaction.class.update({
        where: { id: classId },
        data: { sourcedId: list.value.classSourcedId },
      });
    }
    const counts = countChanges(changes);
    // How many, not whose: nothing here to erase when a student goes.
    const entry = {
      classId,
      action: 'roster-imported',
      subject: `class ${classId}`,
      after: counts,
    };
    await writeAudit(transaction, viewer, entry, clock);
    return success({ counts, undo });
  });
}

function readList(input: unknown): Result<RosterList> {
  const parsed = rosterListSchema.safeParse(input);
  if (!parsed.success) return failure('bad-input', firstMessage(parsed.error));
  const ids = new Map<string, number>();
  const entries = [];
  for (const { row, sourcedId, name } of parsed.data.entries) {
    const read = studentNameSchema.safeParse(name);
    if (!read.success) return failure('bad-input', `Row ${row}: ${firstMessage(read.error)}`);
    const earlier = sourcedId === null ? undefined : ids.get(sourcedId);
    if (earlier !== undefined) {
      return failure('bad-input', `Row ${row}: the same id as row ${earlier}. Nothing was taken.`);
    }
    if (sourcedId !== null) ids.set(sourcedId, row);
    entries.push({ row, sourcedId, name: read.data });
  }
  return success({ ...parsed.data, entries });
}

async function planFor(
  transaction: Transaction,
  classId: string,
  list: RosterList,
): Promise<
  Result<{
    changes: RosterChange[];
    fingerprint: string;
    sourcedId: string | null;
    leftAt: ReadonlyMap<string, Date | null>;
  }>
> {
  const { sourcedId, students } = await transaction.class.findUniqueOrThrow({
    where: { id: classId },
    select: {
      sourcedId: true,
      students: {
        orderBy: { cardNumber: 'asc' },
        select: { id: true, displayName: true, sourcedId: true, leftAt: true },
      },
    },
  });
  const present = students.map(({ id, leftAt, ...student }): PresentStudent => ({
    studentId: id,
    ...student,
    left: leftAt !== null,
  }));
  const changes = planRoster(present, list);
  const { add, leave, untouched, ...stay } = countChanges(changes);
  const after = add + untouched + stay.back + stay.rename + stay.same;
  if (after > mostStudents) {
    return failure(
      'too-many',
      `A class holds at most ${mostStudents} students; with these it would be ${after}. Nothing was taken.`,
    );
  }
  return success({
    changes,
    fingerprint: createHash('sha256')
      .update(JSON.stringify([sourcedId, list.classSourcedId, leave, changes]))
      .digest('hex'),
    sourcedId,
    leftAt: new Map(students.map(({ id, leftAt }) => [id, leftAt])),
  });
}

async function addAll(
  transaction: Transaction,
  classId: string,
  changes: readonly RosterChange[],
): Promise<string[]> {
  const added = changes.filter((change) => change.kind === 'add');
  if (added.length === 0) return [];
  const { nextCardNumber } = await transaction.class.update({
    where: { id: classId },
    data: { nextCardNumber: { increment: added.length } },
    select: { nextCardNumber: true },
  });
  const first = nextCardNumber - added.length;
  const students = await transaction.student.createManyAndReturn({
    data: added.map(({ name, sourcedId }, index) => ({
      classId,
      displayName: name,
      sourcedId,
      cardNumber: first + index,
    })),
    select: { id: true },
  });
  return students.map(({ id }) => id);
}
