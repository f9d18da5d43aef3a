import 'server-only';
import { z } from 'zod';
import { canReadNotes, canSeeClass, canTeachClass, type Viewer } from '../auth/policy';
import { loadKits } from '../content/sky-catalogue';
import { skills } from '../course/skills';
import { agreementOfLevels } from '../measurement/agreement';
import { bySkill } from '../mastery/by-skill';
import { masteryOf } from '../mastery/mastery';
import type { HelpLevel } from '../mastery/sign-off';
import { levelTable } from '../mastery/sign-off-agreement';
import type { AssessorAgreement, SignOffSheet } from '../mastery/sign-off-sheet';
import { classAccessSelect, mayWithClass, teacherIdOf } from './access';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import {
  asNeededLevel,
  observationSelect,
  readObservation,
  type ReadObservation,
} from './observation-rows';
import { failure, notFound, success, type Result } from './result';
import { collectEvidence } from './skill-evidence';

/** What a teacher takes outside, of the whole class: who, in which group, and what was seen so far. */
export async function getSignOffSheet(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<SignOffSheet | null> {
  const schoolClass = await db().class.findUnique({
    where: { id: classId },
    select: { ...classAccessSelect, name: true, timeZone: true, signOffLevel: true },
  });
  if (schoolClass === null || !canSeeClass(viewer, schoolClass)) return null;
  const now = clock.now();
  const here = { classId, leftAt: null };
  const [students, groups, rows, evidence] = await Promise.all([
    db().student.findMany({
      where: here,
      orderBy: { cardNumber: 'asc' },
      select: {
        id: true,
        displayName: true,
        cardNumber: true,
        groups: { select: { groupId: true }, take: 1 },
      },
    }),
    db().group.findMany({
      where: { classId },
      orderBy: [{ name: 'asc' }, { id: 'asc' }],
      select: { id: true, name: true, kitId: true },
    }),
    db().observation.findMany({
      where: { student: here, retractedAt: null },
      orderBy: [{ observedAt: 'asc' }, { id: 'asc' }],
      select: observationSelect,
    }),
    collectEvidence({ student: here }, now),
  ]);
  const { name: className, timeZone, signOffLevel } = schoolClass;
  const kits = loadKits();
  const me = teacherIdOf(viewer);
  const piecesOf = bySkill(evidence);
  const readsNotes = canReadNotes(viewer, schoolClass);
  const read = rows.map((row) => {
    const one = readObservation(row, timeZone);
    return readsNotes ? one : { ...one, note: '' };
  });
  return {
    classId,
    className,
    timeZone,
    needed: asNeededLevel(signOffLevel),
    teacherId: canTeachClass(viewer, schoolClass) ? me : null,
    telescopes: kits.map(({ name }) => name),
    groups: groups.map(({ id, name, kitId }) => ({
      id,
      name,
      telescope: kits.find((kit) => kit.id === kitId)?.name ?? null,
    })),
    students: students.map(({ id, displayName, cardNumber, groups: [group] }) => ({
      id,
      displayName,
      cardNumber,
      groupId: group?.groupId ?? null,
      indoors: skills.filter((skill) => masteryOf(piecesOf(id, skill), now).masteredAt !== null),
    })),
    notes: read.map(({ key, studentId, skill, level, gates, prompts, note, evening, ...row }) => ({
      key,
      studentId,
      skill,
      level,
      gates,
      prompts,
      note,
      evening,
      mine: me !== null && row.assessorId === me,
    })),
    agreement: agreementIn(read),
  };
}

/** The last level of each of the first two who looked at one student, one skill, one evening. */
function agreementIn(rows: readonly ReadObservation[]): AssessorAgreement | null {
  const looks = new Map<string, Map<string, HelpLevel>>();
  for (const { studentId, skill, evening, assessorId, level } of rows) {
    if (assessorId === null) continue;
    const look = `${studentId} ${skill} ${evening}`;
    const byAssessor = looks.get(look) ?? new Map<string, HelpLevel>();
    looks.set(look, byAssessor.set(assessorId, level));
  }
  // By their ids, so that each stands on the same side of every pair.
  const pairs = [...looks.values()].flatMap((byAssessor): [HelpLevel, HelpLevel][] => {
    const [one, other] = [...byAssessor]
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([, level]) => level);
    return one === undefined || other === undefined ? [] : [[one, other]];
  });
  const found = agreementOfLevels(pairs);
  if (found === null) return null;
  const { observed: alike, weighted } = found;
  return { pairs: found.pairs, alike, weighted, table: levelTable(pairs) };
}

const neededSchema = z.union([z.literal(3), z.literal(4)]);

/** The level of help that signs off in this class; what was noted stays as it is and is counted anew. */
export async function setSignOffLevel(
  viewer: Viewer,
  classId: string,
  level: number,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const parsed = neededSchema.safeParse(level);
  if (!parsed.success) return failure('bad-input', 'Choose level 3 or level 4.', 'level');
  await db().$transaction(async (transaction) => {
    const where = { id: classId };
    const select = { signOffLevel: true } as const;
    const before = await transaction.class.findUniqueOrThrow({ where, select });
    const after = await transaction.class.update({
      where,
      data: { signOffLevel: parsed.data },
      select,
    });
    const entry = { classId, action: 'sign-off-level', subject: classId, before, after };
    await writeAudit(transaction, viewer, entry, clock);
  });
  return success(null);
}
