import { beforeAll, describe, expect, test } from 'vitest';
import { hashSecret } from '@/lib/auth/passwords';
import { getAttemptResult, getOpenAttempt, listStudentAssignments } from '@/lib/data/attempts';
import { listAssignments } from '@/lib/data/assignments';
import { db } from '@/lib/data/db';
import { hasDemoAccounts, seedDemo, type DemoSignIns } from '@/lib/data/demo';
import { parseEnv } from '@/lib/data/env';
import { getGradebook, getStudentRecord } from '@/lib/data/gradebook';
import { getMySkills, getSkillMatrix, getSkillRecord } from '@/lib/data/skill-progress';
import { checkCard, checkPassword } from '@/lib/data/sign-in';
import { useSchoolDatabase } from '../support/school-database';
import { monday, valueOf } from '../support/school';

useSchoolDatabase();
const origin = { device: null, address: null };
let signIns: DemoSignIns;
let classId: string;
let teacher: { kind: 'teacher'; teacherId: string; displayName: string };

beforeAll(async () => {
  expect(await hasDemoAccounts()).toBe(false);
  signIns = await seedDemo(monday);
  const { teacherId } = valueOf(await checkPassword(signIns.teacher, origin));
  teacher = { kind: 'teacher', teacherId, displayName: '' };
  const demoClass = await db().class.findFirstOrThrow({ where: { isDemo: true } });
  classId = demoClass.id;
}, 180_000);

test('the printed card opens a student who has work to do and work done', async () => {
  const { studentId } = valueOf(await checkCard(signIns.student, origin));
  const viewer = { kind: 'student', studentId, classId, displayName: '' } as const;
  const work = await listStudentAssignments(viewer, monday);
  expect(work.map(({ state }) => state).toSorted()).toEqual([
    'complete',
    ...Array.from({ length: 6 }, () => 'not-started'),
  ]);
  expect(new Set(work.flatMap(({ parts }) => parts.map(({ lab }) => lab)))).toEqual(
    new Set([
      ...['put-it-together', 'pick-the-pair', 'alignment-run', 'what-went-wrong'],
      'lesson-questions',
    ]),
  );
  expect(signIns.student.words.split(' ')).toHaveLength(3);
});

test('the gradebook is alive: every mark is one that the engine gave', async () => {
  const gradebook = await getGradebook(teacher, classId, monday);
  expect(gradebook?.students).toHaveLength(12);
  expect(gradebook?.assignments.map(({ title }) => title)).toEqual([
    'A first pair',
    'Put it together',
    'Pick the pair for tonight',
    'Alignment run',
    'What went wrong?',
    'Questions: level and power',
    'A lesson: standing it up',
  ]);
  const states = new Set(gradebook?.cells.map(({ state }) => state));
  for (const state of ['complete', 'not-yet', 'missing', 'excused', 'in-progress', 'not-started']) {
    expect(states).toContain(state);
  }
  const late = gradebook?.cells.filter(
    ({ latePenalty }) => latePenalty !== null && latePenalty > 0,
  );
  expect(late).toHaveLength(1);
  const results = await db().mark.findMany({ select: { total: true, result: true } });
  expect(results.length).toBeGreaterThan(15);
  expect(new Set(results.map(({ total }) => total)).size).toBeGreaterThan(4);
  const record = await getStudentRecord(teacher, gradebook?.students[1]?.id ?? '', monday);
  expect(record?.attempts.length).toBeGreaterThan(2);
});

test.each(['put-it-together', 'alignment-run', 'what-went-wrong', 'lesson-questions'] as const)(
  '%s was done well and badly, is under way, and waits for the printed student',
  async (lab) => {
    const attempts = await db().attempt.findMany({
      where: { lab },
      select: { id: true, status: true, studentId: true, marks: { select: { total: true } } },
    });
    const marks = attempts.flatMap(({ marks }) => marks.map(({ total }) => total));
    expect(marks.length).toBeGreaterThan(4);
    expect(Math.max(...marks)).toBeGreaterThan(95);
    expect(Math.min(...marks)).toBeLessThan(50);
    expect(marks.some((mark) => mark > 50 && mark < 95)).toBe(true);
    const open = attempts.filter(({ status }) => status === 'open');
    expect(open.length).toBeGreaterThan(1);
    for (const { id, studentId } of open) {
      const viewer = { kind: 'student', studentId, classId, displayName: '' } as const;
      expect(await getOpenAttempt(viewer, id)).toMatchObject({ lab, nextSequence: 2 });
    }
    // Whoever looks at one is shown what was done.
    for (const { id } of attempts.filter(({ status }) => status === 'submitted')) {
      expect((await getAttemptResult(teacher, id, monday))?.result?.lab).toBe(lab);
    }
  },
);

test('the skills of the class are in every state, and the printed student has a review to do', async () => {
  const matrix = await getSkillMatrix(teacher, classId, monday);
  const all = matrix?.students.flatMap(({ standings }) => standings) ?? [];
  expect(new Set(all.map(({ state }) => state))).toEqual(
    new Set(['not-started', 'practising', 'mastered', 'review-due', 'kept']),
  );
  expect(all.some(({ skill, state }) => skill === 'balance' && state === 'kept')).toBe(true);
  const { studentId } = valueOf(await checkCard(signIns.student, origin));
  const viewer = { kind: 'student', studentId, classId, displayName: '' } as const;
  const states = (await getMySkills(viewer, monday))?.standings.map(({ state }) => state);
  for (const state of ['not-started', 'practising', 'kept', 'review-due']) {
    expect(states).toContain(state);
  }
  const record = await getSkillRecord(teacher, studentId, 'level', monday);
  expect(record?.pieces.map(({ made }) => made)).toEqual(
    expect.arrayContaining(['mastery', 'review']),
  );
});

test('a draft waits beside what is published', async () => {
  const states = (await listAssignments(teacher, classId))?.map(({ state }) => state);
  expect(states?.toSorted()).toEqual(['draft', ...Array.from({ length: 7 }, () => 'published')]);
});

describe('a second start', () => {
  test('adds nothing, and puts the printed sign-ins right again', async () => {
    const before = await db().attempt.count();
    await db().teacher.updateMany({ data: { passwordHash: await hashSecret('something else') } });
    await db().student.updateMany({ data: { secretHash: null } });
    expect(await seedDemo(monday)).toEqual(signIns);
    expect(await db().attempt.count()).toBe(before);
    expect(valueOf(await checkPassword(signIns.teacher, origin)).teacherId).toBe(teacher.teacherId);
    valueOf(await checkCard(signIns.student, origin));
  });

  test('finds the demonstration where a school looks for it', async () => {
    expect(await hasDemoAccounts()).toBe(true);
  });
});

test('the settings of the environment are read strictly', () => {
  expect(parseEnv({})).toMatchObject({ mode: 'demo', secureCookies: false, trustProxy: false });
  expect(parseEnv({}).dataFolder).toMatch(/data[/\\]demo$/);
  expect(parseEnv({ DUSKBENCH_SCHOOL: '1' }).dataFolder).toMatch(/data[/\\]school$/);
  expect(parseEnv({ DUSKBENCH_PUBLIC_URL: 'https://dusk.example.org' }).secureCookies).toBe(true);
  expect(parseEnv({ DUSKBENCH_PUBLIC_URL: 'http://10.0.0.5:3000' }).secureCookies).toBe(false);
  expect(() => parseEnv({ DUSKBENCH_SCHOOL: 'maybe' })).toThrow('DUSKBENCH_SCHOOL');
  expect(() => parseEnv({ DUSKBENCH_PUBLIC_URL: 'dusk' })).toThrow('DUSKBENCH_PUBLIC_URL');
});
