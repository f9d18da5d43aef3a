import 'server-only';
import { createHash } from 'node:crypto';
import { z } from 'zod';
import { canSeeClass, canTeachClass, type Viewer } from '../auth/policy';
import { loadKits } from '../content/sky-catalogue';
import { mayWithClass } from './access';
import { writeAudit } from './audit';
import { holdClass } from './class-in-line';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { firstField, firstMessage, nameSchema } from './names';
import { failure, notFound, success, type Result } from './result';

export type GroupStudent = { studentId: string; displayName: string; cardNumber: number };
export type ClassGroup = {
  groupId: string;
  name: string;
  /** The telescope they share; null: none is set. */
  kitId: string | null;
  /** By card number; those who left are in no list. */
  students: GroupStudent[];
  /** Later due times given to the group as a whole: they go with it. */
  extensionCount: number;
};
export type ClassGroups = {
  groups: ClassGroup[];
  withoutGroup: GroupStudent[];
  /** Of this state of things; a save says which state it was made from. */
  version: string;
};

const mostGroups = 40;
const inputSchema = z.object({
  version: z.string().max(100),
  groups: z
    .array(
      z.object({
        /** null: a new one; so is one that was deleted meanwhile and is wanted back. */
        groupId: z.string().max(100).nullable(),
        name: nameSchema('The name of a group', 40),
        kitId: z
          .string()
          .nullable()
          .refine((kitId) => kitId === null || loadKits().some(({ id }) => id === kitId), {
            error: 'This telescope is not known. Choose one from the list.',
          }),
        studentIds: z.array(z.string().max(100)).max(500),
      }),
    )
    .max(mostGroups, `A class has at most ${mostGroups} groups.`),
});
export type GroupsInput = z.input<typeof inputSchema>;

const studentSelect = { id: true, displayName: true, cardNumber: true } as const;
const asStudent = (student: {
  id: string;
  displayName: string;
  cardNumber: number;
}): GroupStudent => ({
  studentId: student.id,
  displayName: student.displayName,
  cardNumber: student.cardNumber,
});

async function readGroups(transaction: Transaction, classId: string): Promise<ClassGroups> {
  const here = { classId, leftAt: null };
  const byCard = { cardNumber: 'asc' } as const;
  const [rows, alone] = await Promise.all([
    transaction.group.findMany({
      where: { classId },
      select: {
        id: true,
        name: true,
        kitId: true,
        members: {
          where: { student: { leftAt: null } },
          orderBy: { student: byCard },
          select: { student: { select: studentSelect } },
        },
        _count: { select: { extensions: true } },
      },
    }),
    transaction.student.findMany({
      where: { ...here, groups: { none: {} } },
      orderBy: byCard,
      select: studentSelect,
    }),
  ]);
  const groups = rows
    .map(({ id, name, kitId, members, _count }) => ({
      groupId: id,
      name,
      kitId,
      students: members.map(({ student }) => asStudent(student)),
      extensionCount: _count.extensions,
    }))
    // "Table 10" after "Table 9".
    .toSorted((one, other) => one.name.localeCompare(other.name, 'en', { numeric: true }));
  return { groups, withoutGroup: alone.map(asStudent), version: versionOf(groups) };
}

/** A name for one state of the groups, so that two teachers do not undo each other unawares. */
function versionOf(groups: readonly ClassGroup[]): string {
  const facts = groups.map(({ groupId, name, kitId, students }) => [
    groupId,
    name,
    kitId,
    students.map(({ studentId }) => studentId),
  ]);
  return createHash('sha256').update(JSON.stringify(facts)).digest('hex').slice(0, 32);
}

/** The class's groups with their telescopes, and who is in none. */
export async function getGroups(viewer: Viewer, classId: string): Promise<ClassGroups | null> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return null;
  return db().$transaction((transaction) => readGroups(transaction, classId));
}

type Wanted = z.output<typeof inputSchema>['groups'];

/** What cannot be saved as it stands; null when it can. */
function problemWith(wanted: Wanted, inClass: ReadonlySet<string>) {
  const names = new Map<string, string>();
  const placed = new Set<string>();
  const kept = new Set<string>();
  for (const [index, { groupId, name, studentIds }] of wanted.entries()) {
    const folded = name.toLocaleLowerCase('en');
    if (names.has(folded)) {
      return failure(
        'name-taken',
        `Two groups are called ${name}. Give one of them another name.`,
        `groups.${index}.name`,
      );
    }
    names.set(folded, name);
    if (groupId !== null) {
      if (kept.has(groupId)) return notFound();
      kept.add(groupId);
    }
    for (const studentId of studentIds) {
      if (!inClass.has(studentId)) return notFound();
      if (placed.has(studentId)) {
        return failure('in-two-groups', 'A student can be in one group only.', `groups.${index}`);
      }
      placed.add(studentId);
    }
  }
  return null;
}

/**
 * Puts the groups of a class as they are wanted, all at once: what is not in the list is deleted, with
 * the later due times that were given to it. Refused when they changed since `version` was read.
 */
export async function saveGroups(
  viewer: Viewer,
  classId: string,
  input: unknown,
  clock: Clock = systemClock,
): Promise<Result<ClassGroups>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const parsed = inputSchema.safeParse(input);
  if (!parsed.success) {
    return failure('bad-input', firstMessage(parsed.error), firstField(parsed.error));
  }
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    const before = await readGroups(transaction, classId);
    if (before.version !== parsed.data.version) {
      return failure(
        'changed-meanwhile',
        'Somebody else has changed the groups since you opened them. Load the page again to see theirs; what you have here is not saved.',
      );
    }
    const known = new Set(before.groups.map(({ groupId }) => groupId));
    const wanted = parsed.data.groups.map((group) => ({
      ...group,
      groupId: group.groupId !== null && known.has(group.groupId) ? group.groupId : null,
    }));
    const inClass = new Set(
      [...before.withoutGroup, ...before.groups.flatMap(({ students }) => students)].map(
        ({ studentId }) => studentId,
      ),
    );
    const problem = problemWith(wanted, inClass);
    if (problem !== null) return problem;
    await writeGroups(transaction, classId, wanted);
    const after = await readGroups(transaction, classId);
    if (after.version !== before.version) {
      const entry = {
        classId,
        action: 'groups-changed',
        subject: `class ${classId}`,
        // Names of groups and how many, not who: nothing here to erase when a student goes.
        before: sizesOf(before),
        after: sizesOf(after),
      };
      await writeAudit(transaction, viewer, entry, clock);
    }
    return success(after);
  });
}

const sizesOf = ({ groups }: ClassGroups) =>
  groups.map(({ name, kitId, students }) => ({ name, kitId, students: students.length }));

async function writeGroups(
  transaction: Transaction,
  classId: string,
  wanted: Wanted,
): Promise<void> {
  const kept = wanted.flatMap(({ groupId }) => groupId ?? []);
  await transaction.group.deleteMany({ where: { classId, id: { notIn: kept } } });
  // Whoever left keeps the group, for the day of coming back.
  await transaction.groupMember.deleteMany({
    where: { group: { classId }, student: { leftAt: null } },
  });
  // Out of the way first, so that two groups can swap their names.
  for (const id of kept) {
    await transaction.group.update({ where: { id }, data: { name: `· ${id}` } });
  }
  for (const { groupId, name, kitId, studentIds } of wanted) {
    const { id } =
      groupId === null
        ? await transaction.group.create({ data: { classId, name, kitId }, select: { id: true } })
        : await transaction.group.update({
            where: { id: groupId },
            data: { name, kitId },
            select: { id: true },
          });
    await transaction.groupMember.createMany({
      data: studentIds.map((studentId) => ({ groupId: id, studentId })),
    });
  }
}
