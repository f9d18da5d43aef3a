import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { listStudentAssignments } from '@/lib/data/attempts';
import type { AssignmentPolicy } from '@/lib/data/assignment-input';
import { getClassStatistics } from '@/lib/data/class-statistics';
import { db } from '@/lib/data/db';
import { getGradebook } from '@/lib/data/gradebook';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  assignmentInput,
  dueAt,
  labPart,
  makeSchool,
  monday,
  partsOf,
  published,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
let assignmentId: string;
let parts: string[];
beforeAll(async () => {
  school = await makeSchool();
  const part = labPart('pick-the-pair', ['free-pair']);
  const task = { parts: [part, { ...part, weight: 3 }] };
  assignmentId = await published(school, { attemptsAllowed: null }, monday, task);
  parts = await partsOf(assignmentId);
});

const hour = (hours: number) => new Date(monday.now().getTime() + hours * 3_600_000);
type Work = {
  part: number;
  /** Hours from Monday on. */
  started: number;
  submitted: number | null;
  mark: { total: number; gateFailed: boolean } | null;
  returned: boolean;
  policy: Partial<AssignmentPolicy>;
};

/** Ann's attempts as if she had made them, in place of all she had. */
async function done(works: readonly Work[]) {
  const { studentId } = school.ann;
  const own = { studentId, assignmentId };
  await db().attempt.deleteMany({ where: own });
  for (const [index, { part, started, submitted, mark, returned, policy }] of works.entries()) {
    const number = works.slice(0, index).filter((other) => other.part === part).length + 1;
    const attempt = await db().attempt.create({
      data: {
        ...own,
        partId: parts[part] ?? null,
        mode: 'check',
        lab: 'pick-the-pair',
        number,
        title: 'Pick the pair',
        placeName: 'Keswick',
        template: 'free-pair',
        seed: 'seed',
        variant: {},
        answerKey: {},
        dueTimeZone: 'Europe/London',
        graderVersion: 1,
        generatorVersion: 1,
        catalogueVersion: '1',
        zoneRulesVersion: '1',
        policy: { ...assignmentInput().policy, ...policy },
        startedAt: hour(started),
        status: submitted === null ? 'open' : 'submitted',
        submittedAt: submitted === null ? null : hour(submitted),
        returnedAt: returned && submitted !== null ? hour(submitted + 1) : null,
      },
    });
    if (submitted !== null && mark !== null)
      await db().mark.create({
        data: {
          attemptId: attempt.id,
          graderVersion: 1,
          ...mark,
          result: { criteria: [] },
          gradedAt: hour(submitted),
        },
      });
  }
}

async function bothSides(clock = monday) {
  const gradebook = await getGradebook(school.owner, school.classId, clock);
  const cell = gradebook?.cells.find(({ studentId }) => studentId === school.ann.studentId);
  const [card] = await listStudentAssignments(school.ann, clock);
  if (cell === undefined || card === undefined) throw new Error('both sides list the assignment');
  const told = ({ state, mark, gateFailed, passMark }: typeof cell | typeof card) => ({
    state,
    mark,
    gateFailed,
    passMark,
  });
  const mean = gradebook?.students.find(({ id }) => id === school.ann.studentId)?.mean;
  return { teacher: told(cell), student: told(card), mean };
}

const policy: fc.Arbitrary<Partial<AssignmentPolicy>> = fc.record({
  passMark: fc.constantFrom(50, 60, 70),
  counting: fc.constantFrom('best', 'last', 'first', 'average'),
  dueAt: fc.constantFrom(null, dueAt, hour(2).toISOString()),
});
const often = <T>(usual: T, rare: T) =>
  fc.oneof(
    { weight: 6, arbitrary: fc.constant(usual) },
    { weight: 1, arbitrary: fc.constant(rare) },
  );
const works = fc.array(
  fc.record<Work>({
    part: fc.nat({ max: 1 }),
    started: fc.nat({ max: 4 }),
    submitted: fc.option(fc.constantFrom(5, 30, 130), { freq: 9 }),
    mark: fc.option(
      fc.record({ total: fc.constantFrom(40, 65, 70, 90), gateFailed: often(false, true) }),
      { freq: 9 },
    ),
    returned: often(false, true),
    policy,
  }),
  { maxLength: 5 },
);
const word = fc.oneof(
  { weight: 3, arbitrary: fc.constant(null) },
  {
    weight: 1,
    arbitrary: fc.record({ mark: fc.option(fc.constantFrom(55, 80)), excused: fc.boolean() }),
  },
);

test('the teacher’s cell and the student’s card tell the same of whatever was done', async () => {
  await fc.assert(
    fc.asyncProperty(
      ...[works, policy, word, fc.option(fc.constantFrom(1, 200)), fc.constantFrom(1, 140)],
      async (list, { passMark = 70, dueAt: due = null }, said, extension, now) => {
        const { studentId } = school.ann;
        await done(list);
        await db().assignment.update({
          where: { id: assignmentId },
          data: { passMark, dueAt: due === null ? null : new Date(due) },
        });
        await db().override.deleteMany({ where: { assignmentId } });
        await db().extension.deleteMany({ where: { assignmentId } });
        const by = { assignmentId, studentId, note: 'x', changedAt: monday.now() };
        if (said !== null) await db().override.create({ data: { ...by, ...said } });
        if (extension !== null)
          await db().extension.create({ data: { ...by, dueAt: hour(extension) } });
        const { teacher, student } = await bothSides({ now: () => hour(now) });
        expect(student).toEqual(teacher);
      },
    ),
    { numRuns: 80 },
  );
});

const good = { total: 65, gateFailed: false };
/** In time, by the rules as they were at some hour. */
const work = (part: number, started: number, change: Partial<Work> = {}): Work => ({
  part,
  started,
  submitted: started + 1,
  mark: good,
  returned: false,
  policy: {},
  ...change,
});
/** Nothing decided by hand, and the assignment as it is now. */
async function assignmentNow(data: { passMark?: number; dueAt?: Date }) {
  await db().override.deleteMany({ where: { assignmentId } });
  await db().extension.deleteMany({ where: { assignmentId } });
  await db().assignment.update({
    where: { id: assignmentId },
    data: { passMark: 70, dueAt: new Date(dueAt), ...data },
  });
}

test('the rules of the part begun last hold, whichever in order it is, and statistics go by them', async () => {
  await assignmentNow({ passMark: 80 });
  const lowered = { policy: { passMark: 60 } };
  await done([work(1, 0), work(0, 1, lowered)]);
  const { teacher, student } = await bothSides();
  expect(teacher).toEqual({ state: 'complete', mark: 65, gateFailed: false, passMark: 60 });
  expect(student).toEqual(teacher);
  const statistics = await getClassStatistics(school.owner, school.classId, monday);
  expect(statistics?.assignments[0]).toMatchObject({ marks: [65], reached: 1 });
});

test('a part that nobody began is missing past the due time, and the mean waits all the same', async () => {
  await assignmentNow({});
  await done([work(0, 0)]);
  const before = await bothSides(afterDue(0));
  expect([before.teacher.state, before.student.state]).toEqual(['in-progress', 'in-progress']);
  const after = await bothSides(afterDue(1));
  expect([after.teacher.state, after.student.state]).toEqual(['missing', 'missing']);
  expect(after.mean).toBeNull();
});

test('what is not begun goes by the due time as it is now, not by that of the parts before it', async () => {
  await assignmentNow({ dueAt: afterDue(48).now() });
  await done([work(0, 0)]);
  for (const [hours, state] of [
    [47, 'in-progress'],
    [49, 'missing'],
  ] as const) {
    const { teacher, student } = await bothSides(afterDue(hours));
    expect([teacher.state, student.state]).toEqual([state, state]);
  }
});

test('a part that is open past the due time is in progress and not missing', async () => {
  await assignmentNow({});
  await done([work(0, 0), work(1, 1, { submitted: null })]);
  const { teacher, student } = await bothSides(afterDue(1));
  expect([teacher.state, student.state]).toEqual(['in-progress', 'in-progress']);
});
