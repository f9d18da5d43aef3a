import 'server-only';
import { hashSecret, secretMatches } from '../auth/passwords';
import type { Viewer } from '../auth/policy';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { makeDemoClass } from './demo-class';
import { demoImportName } from './demo-import';
import { env } from './env';

export type DemoSignIns = {
  teacher: { email: string; password: string };
  student: { displayName: string; classCode: string; cardNumber: number; words: string };
};

const teacherSignIn = { email: 'teacher@duskbench.example', password: 'stars over hollin bank' };
const studentWords = 'maple comet otter';
/** Whose card is printed: has the earlier work behind and tonight's still to do. */
const printed = 4;

/** For a school's start: whether somebody put the demonstration's accounts into its data. */
export const hasDemoAccounts = async (): Promise<boolean> =>
  (await db().teacher.count({ where: { isDemo: true } })) > 0 ||
  (await db().class.count({ where: { isDemo: true } })) > 0;

/**
 * Makes the demonstration class unless it is there. Its sign-ins are fixed, and are put right again
 * at each start when somebody changed them, so that what is printed works.
 */
export async function seedDemo(clock: Clock = systemClock): Promise<DemoSignIns> {
  if (env().mode === 'school') throw new Error('a school gets no demonstration accounts');
  const teacher = await demoTeacher(clock);
  const finished = await db().contentImport.findUnique({ where: { name: demoImportName } });
  // An interrupted start left half a class behind.
  if (finished === null) await db().class.deleteMany({ where: { isDemo: true } });
  const demoClass = await db().class.findFirst({ where: { isDemo: true }, select: { id: true } });
  const classId = demoClass?.id ?? (await makeToItsEnd(teacher, clock));
  return { teacher: teacherSignIn, student: await studentSignIn(classId) };
}

async function makeToItsEnd(teacher: Viewer, clock: Clock): Promise<string> {
  const name = demoImportName;
  // The mark of an earlier class, which somebody deleted, would stand for this one while it is half made,
  // and its lesson would be counted from that one's.
  await db().contentImport.deleteMany({ where: { name } });
  const classId = await makeDemoClass(teacher, clock);
  await db().contentImport.create({ data: { name, version: '1', importedAt: clock.now() } });
  return classId;
}

async function demoTeacher(clock: Clock): Promise<Viewer> {
  const { email, password } = teacherSignIn;
  const displayName = 'Robin Ashworth';
  const there = await db().teacher.findUnique({ where: { email }, select: { passwordHash: true } });
  const passwordHash =
    there !== null && (await secretMatches(there.passwordHash, password))
      ? there.passwordHash
      : await hashSecret(password);
  const { id } = await db().teacher.upsert({
    where: { email },
    create: { email, displayName, passwordHash, isDemo: true, createdAt: clock.now() },
    update: { passwordHash },
    select: { id: true },
  });
  return { kind: 'teacher', teacherId: id, displayName };
}

async function studentSignIn(classId: string): Promise<DemoSignIns['student']> {
  const student = await db().student.findFirst({
    where: { classId, cardNumber: printed + 1 },
    select: {
      id: true,
      displayName: true,
      cardNumber: true,
      secretHash: true,
      class: { select: { code: true } },
    },
  });
  // The teacher of the demonstration may have taken the student off the roster: then there is no card.
  if (student === null) return { displayName: '', classCode: '', cardNumber: 0, words: '' };
  const words = studentWords.replaceAll(' ', '-');
  if (!(await secretMatches(student.secretHash, words))) {
    await db().student.update({
      where: { id: student.id },
      data: { secretHash: await hashSecret(words) },
    });
  }
  const { displayName, cardNumber } = student;
  return { displayName, classCode: student.class.code, cardNumber, words: studentWords };
}
