import type { db as database } from '../data/db';

/** A whole year of a school in one class. */
export const largeClass = { id: 'c', students: 200, assignments: 40 } as const;

const day = 86_400_000;

/** Two attempts in every other cell, one in the others: 12,000 with their marks. */
export async function fillLargeClass(
  db: ReturnType<typeof database>,
  teacherId: string,
): Promise<void> {
  const at = new Date('2026-09-01T09:00:00Z').getTime();
  const moment = (days: number): Date => new Date(at + days * day);
  const policy = {
    attemptsAllowed: 2,
    dueAt: moment(30).toISOString(),
    graceMinutes: 15,
    latePenaltyPerDay: 0.1,
    latePenaltyCap: 0.5,
    passMark: 70,
    feedback: 'at-once',
    counting: 'best',
  };
  await db.class.create({
    data: {
      id: largeClass.id,
      name: 'All of year 8',
      code: 'MEASURED',
      timeZone: 'Europe/London',
      retentionDate: moment(400),
      createdAt: moment(0),
      members: { create: { teacherId, role: 'owner' } },
    },
  });
  const numbers = (count: number): number[] => Array.from({ length: count }, (_, index) => index);
  await db.student.createMany({
    data: numbers(largeClass.students).map((s) => ({
      id: `s${String(s)}`,
      classId: largeClass.id,
      cardNumber: s + 1,
      displayName: `Student ${String(s + 1)}`,
    })),
  });
  for (const a of numbers(largeClass.assignments)) {
    const assignmentId = `a${String(a)}`;
    const partId = `p${String(a)}`;
    await db.assignment.create({
      data: {
        id: assignmentId,
        classId: largeClass.id,
        title: `Week ${String(a + 1)}`,
        state: 'published',
        ...policy,
        feedback: 'at_once',
        counting: 'best',
        dueTimeZone: 'Europe/London',
        publishedAt: moment(a),
        createdAt: moment(a),
        parts: { create: { id: partId, position: 0, kind: 'lab', reference: 'level' } },
      },
    });
    const attempts = numbers(largeClass.students).flatMap((s) =>
      numbers(1 + (s % 2)).map((index) => ({ s, number: index + 1 })),
    );
    const idOf = ({ s, number }: { s: number; number: number }): string =>
      `${assignmentId}-s${String(s)}-${String(number)}`;
    await db.attempt.createMany({
      data: attempts.map((one) => ({
        id: idOf(one),
        studentId: `s${String(one.s)}`,
        assignmentId,
        partId,
        mode: 'check',
        number: one.number,
        status: 'submitted',
        lab: 'level',
        title: 'Level',
        placeName: 'Keswick',
        template: 'soft-ground',
        seed: idOf(one),
        policy,
        variant: {},
        answerKey: {},
        submission: {},
        dueTimeZone: 'Europe/London',
        graderVersion: 1,
        generatorVersion: 1,
        catalogueVersion: '1',
        zoneRulesVersion: '1',
        startedAt: moment(a),
        submittedAt: moment(29 + one.number),
      })),
    });
    await db.mark.createMany({
      data: attempts.map((one) => ({
        attemptId: idOf(one),
        graderVersion: 1,
        result: {},
        gradedAt: moment(a),
        total: (one.s * 7 + a * 3 + one.number) % 101,
      })),
    });
  }
}
