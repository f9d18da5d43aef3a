import { randomUUID } from 'node:crypto';
import type { Viewer } from '@/lib/auth/policy';
import { createAssignment, publishAssignment } from '@/lib/data/assignments';
import type { AssignmentInput, AssignmentPartInput } from '@/lib/data/assignment-input';
import type { Lab } from '@/lib/variants/labs';
import { startAttempt } from '@/lib/data/attempts';
import { createClass } from '@/lib/data/classes';
import { fixedClock } from '@/lib/data/clock';
import { db } from '@/lib/data/db';
import {
  defaultPlace,
  eveningScenario,
  kitOrFirst,
  siteOrSchoolYard,
} from '@/lib/data/default-evening';
import { demoChoice, type DemoSkill } from '@/lib/data/demo-choice';
import type { Result } from '@/lib/data/result';
import { addStudents } from '@/lib/data/roster';
import { pairVariantSchema } from '@/lib/data/lab-tasks/stored-pair';
import { storedAnswerKeySchema } from '@/lib/data/lab-tasks/stored-sky';
import type { PairSubmission } from '@/lib/grading/pair-submission';

/** The value of a result that must be there. */
export function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.problem.code}: ${result.problem.message}`);
  return result.value;
}

/** The code of a refusal; 'ok' where there was none, so that a test can say what it expected. */
export const codeOf = (result: Result<unknown>): string => (result.ok ? 'ok' : result.problem.code);

export const at = (instant: string) => fixedClock(instant);
/** All tests play in this week. Attempts are due on Friday 4 December 2026, 18:00 UTC. */
export const monday = at('2026-11-30T09:00:00Z');
export const dueAt = '2026-12-04T18:00:00.000Z';
/** An instant that many hours after the due time. */
export const afterDue = (hours: number) =>
  at(new Date(Date.parse(dueAt) + hours * 3_600_000).toISOString());

export async function makeTeacher(name: string): Promise<Extract<Viewer, { kind: 'teacher' }>> {
  const { id } = await db().teacher.create({
    data: {
      email: `${name}-${randomUUID()}@school.example`,
      displayName: name,
      passwordHash: 'not a hash: this teacher does not sign in',
      createdAt: monday.now(),
    },
  });
  return { kind: 'teacher', teacherId: id, displayName: name };
}

const studentViewer = (classId: string, studentId: string | undefined, displayName: string) => {
  if (studentId === undefined) throw new Error('the student was not added');
  return { kind: 'student', studentId, classId, displayName } as const;
};

/** One part of an assignment, that counts as much as any other. */
export const labPart = (
  lab: Lab,
  templates: readonly string[],
  change: Partial<AssignmentPartInput> = {},
): AssignmentPartInput => ({
  lab,
  templates: [...templates],
  windowMinutes: 20,
  minutesAllowed: null,
  weight: 1,
  ...change,
});

/** An assignment that reads: a clear December evening over an open field. */
export function assignmentInput(change: Partial<AssignmentInput['policy']> = {}): AssignmentInput {
  return {
    title: 'Pick the pair',
    placeName: 'Keswick',
    scenario: eveningScenario({
      place: defaultPlace,
      localTime: '2026-12-05T19:30',
      kit: kitOrFirst('wren'),
      site: siteOrSchoolYard('open-field'),
    }),
    kitId: 'wren',
    siteId: 'open-field',
    parts: [labPart('pick-the-pair', ['free-pair'])],
    lessons: ['choosing-alignment-stars'],
    weight: 1,
    needsSignOff: false,
    policy: {
      attemptsAllowed: 2,
      dueAt,
      graceMinutes: 15,
      latePenaltyPerDay: 0.1,
      latePenaltyCap: 0.5,
      passMark: 70,
      feedback: 'at-once',
      counting: 'best',
      ...change,
    },
    dueTimeZone: 'Europe/London',
  };
}

/** Two classes of two teachers who know nothing of each other, with colleagues in the first. */
export async function makeSchool() {
  const owner = await makeTeacher('owner');
  const colleague = await makeTeacher('colleague');
  const observer = await makeTeacher('observer');
  const stranger = await makeTeacher('stranger');
  const zone = { timeZone: 'Europe/London' };
  const { classId } = valueOf(await createClass(owner, { name: 'Year 8', ...zone }, monday));
  const other = valueOf(await createClass(stranger, { name: 'Year 9', ...zone }, monday));
  await db().classMember.createMany({
    data: [
      { classId, teacherId: colleague.teacherId, role: 'teacher' },
      { classId, teacherId: observer.teacherId, role: 'observer' },
    ],
  });
  const added = valueOf(await addStudents(owner, classId, ['Ann', 'Ben', 'Cy']));
  const elsewhere = valueOf(await addStudents(stranger, other.classId, ['Dee']));
  return {
    owner,
    colleague,
    observer,
    stranger,
    anonymous: { kind: 'anonymous' } as const,
    classId,
    otherClassId: other.classId,
    ann: studentViewer(classId, added.studentIds[0], 'Ann'),
    ben: studentViewer(classId, added.studentIds[1], 'Ben'),
    cy: studentViewer(classId, added.studentIds[2], 'Cy'),
    dee: studentViewer(other.classId, elsewhere.studentIds[0], 'Dee'),
  };
}
export type School = Awaited<ReturnType<typeof makeSchool>>;

export async function published(
  school: School,
  change: Partial<AssignmentInput['policy']> = {},
  clock = monday,
  task: Partial<AssignmentInput> = {},
): Promise<string> {
  const input = { ...assignmentInput(change), ...task };
  const { assignmentId } = valueOf(
    await createAssignment(school.owner, school.classId, input, clock),
  );
  valueOf(await publishAssignment(school.owner, assignmentId, clock));
  return assignmentId;
}

/** What the database keeps of an attempt, for choosing an answer of a known quality. */
export async function answerFor(attemptId: string, skill: DemoSkill): Promise<PairSubmission> {
  const { variant, answerKey } = await db().attempt.findUniqueOrThrow({
    where: { id: attemptId },
    select: { variant: true, answerKey: true },
  });
  return demoChoice(
    pairVariantSchema.parse(variant),
    storedAnswerKeySchema.parse(answerKey),
    skill,
  );
}

/** The ids of the marked parts of an assignment, in order. */
export async function partsOf(assignmentId: string): Promise<string[]> {
  const parts = await db().assignmentPart.findMany({
    where: { assignmentId, kind: 'lab' },
    orderBy: { position: 'asc' },
    select: { id: true },
  });
  return parts.map(({ id }) => id);
}

/** An attempt at the first part of an assignment, or at the one of that number (from 0). */
export async function startPart(
  viewer: Viewer,
  assignmentId: string,
  clock = monday,
  index = 0,
): Promise<Result<{ attemptId: string }>> {
  const partId = (await partsOf(assignmentId))[index] ?? 'no such part';
  return startAttempt(viewer, assignmentId, partId, clock);
}

export async function started(
  viewer: Viewer,
  assignmentId: string,
  clock = monday,
  index = 0,
): Promise<string> {
  return valueOf(await startPart(viewer, assignmentId, clock, index)).attemptId;
}
