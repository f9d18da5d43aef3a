import { beforeAll, describe, expect, test, vi } from 'vitest';
import { hashSecret } from '@/lib/auth/passwords';
import { getAttemptResult, getOpenAttempt, listStudentAssignments } from '@/lib/data/attempts';
import { listAssignments } from '@/lib/data/assignments';
import { createClass } from '@/lib/data/classes';
import { db } from '@/lib/data/db';
import { hasDemoAccounts, seedDemo, type DemoSignIns } from '@/lib/data/demo';
import { makeDemoClass } from '@/lib/data/demo-class';
import type { Clock } from '@/lib/data/clock';
import { parseEnv } from '@/lib/data/env';
import { getGradebook, getStudentRecord } from '@/lib/data/gradebook';
import { getLiveBoard } from '@/lib/data/live-board';
import { readLiveOptions } from '@/lib/data/live-input';
import { watchClass, type LiveLook } from '@/lib/data/live-watch';
import { addStudents } from '@/lib/data/roster';
import { openSession } from '@/lib/data/sessions';
import { getMySkills, getSkillMatrix, getSkillRecord } from '@/lib/data/skill-progress';
import { getSignOffSheet } from '@/lib/data/sign-off-sheet';
import { checkCard, checkPassword } from '@/lib/data/sign-in';
import { useSchoolDatabase } from '../support/school-database';
import { at, monday, valueOf } from '../support/school';

useSchoolDatabase();
// The whole class takes long to make: a test that needs but any may make a small one.
vi.mock('@/lib/data/demo-class', async (importOriginal) => {
  const actual = await importOriginal<{ makeDemoClass: typeof makeDemoClass }>();
  return { makeDemoClass: vi.fn(actual.makeDemoClass) };
});
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

// Worked by hand: off the diagonal one pair 2 apart of (3, 1) and three 1 apart; 11 of 15 on it.
test('two assessors have seen the same, agree mostly, and say where they do not', async () => {
  const sheet = await getSignOffSheet(teacher, classId, monday);
  expect(sheet?.agreement).toMatchObject({ pairs: 15, alike: 11 / 15 });
  const cells = sheet?.agreement?.table.flat() ?? [];
  expect(cells.reduce((sum, count) => sum + count, 0)).toBe(15);
  const colleague = await db().teacher.findFirstOrThrow({
    where: { isDemo: true, id: { not: teacher.teacherId } },
  });
  expect(colleague.passwordHash).toMatch(/^\$argon2id\$/);
  expect(sheet?.notes.filter(({ mine }) => !mine)).toHaveLength(15);
});

test('a draft waits beside what is published', async () => {
  const states = (await listAssignments(teacher, classId))?.map(({ state }) => state);
  expect(states?.toSorted()).toEqual(['draft', ...Array.from({ length: 7 }, () => 'published')]);
});

describe('the live board of the invented class', () => {
  const usual = readLiveOptions({});
  const later = (minutes: number) =>
    at(new Date(monday.now().getTime() + minutes * 60_000).toISOString());
  const statesOf = async (clock: Clock) => {
    const board = await getLiveBoard(teacher, classId, usual, clock);
    return new Map(board?.tiles.map(({ cardNumber, state }) => [cardNumber, state]));
  };

  test('shows somebody in every state, and who needs help first, weeks after it was made', async () => {
    const made = await statesOf(later(0));
    const cards = (state: string) =>
      [...made].flatMap(([card, is]) => (is === state ? card : [])).toSorted((a, b) => a - b);
    expect(cards('away')).toEqual([5, 7, 12]);
    expect(cards('working')).toEqual([4, 6, 8, 10]);
    // Card 3 put things together backwards: whether that is a matter of safety, its task decides.
    expect(cards('done').filter((card) => card !== 3)).toEqual([1, 9]);
    expect(cards('needs-help').filter((card) => card !== 3)).toEqual([2, 11]);
    // Whole laps of five minutes, so that the same moment comes round.
    for (const minutes of [5, 60, 21 * 24 * 60]) {
      expect(await statesOf(later(minutes))).toEqual(made);
    }
    const board = await getLiveBoard(teacher, classId, usual, later(24 * 60));
    expect(board?.tiles[0]?.state).toBe('needs-help');
    const quiet = board?.tiles.find(({ need }) => need?.why === 'no-new-step');
    expect(quiet?.need).toMatchObject({ since: later(24 * 60 - 9).now() });
  });

  test('stays alive at every minute of a lap', async () => {
    for (const minute of [1, 2, 3, 4, 4.9]) {
      const states = [...(await statesOf(later(600 + minute))).values()];
      expect(states.filter((state) => state === 'needs-help').length).toBeLessThan(6);
      expect(states).toContain('working');
    }
  });

  test('shows a student who does something as they are, and writes nothing by looking', async () => {
    const student = await db().student.findFirstOrThrow({ where: { classId, cardNumber: 2 } });
    const clock = later(300);
    expect((await statesOf(clock)).get(2)).toBe('needs-help');
    const events = await db().event.findMany();
    await openSession({ studentId: student.id }, { device: 'x', previousToken: null }, clock);
    expect((await statesOf(clock)).get(2)).toBe('here');
    expect(await db().event.findMany()).toEqual(events);
    await db().session.deleteMany({ where: { studentId: student.id } });
  });

  test('is watched without reading again what has not changed', async () => {
    const looks: LiveLook[] = [];
    let look = (): Promise<void> => Promise.resolve();
    const stop = watchClass(
      classId,
      (seen) => {
        looks.push(seen);
        return Promise.resolve();
      },
      {
        clock: later(60),
        ticker: (run) => {
          look = run;
          return () => undefined;
        },
      },
    );
    await look();
    // Nobody changes these: whoever reads them anew shows something else.
    const drafts = await db().event.findMany({ where: { kind: 'draft' } });
    await db().event.updateMany({ where: { kind: 'draft' }, data: { payload: {} } });
    await db().class.update({ where: { id: classId }, data: { isDemo: false } });
    await look();
    stop();
    await db().class.update({ where: { id: classId }, data: { isDemo: true } });
    for (const { attemptId, sequence, payload } of drafts) {
      await db().event.update({
        where: { attemptId_sequence: { attemptId, sequence } },
        data: { payload: payload ?? {} },
      });
    }
    const [first, second] = looks.map((seen) => (seen.ok ? seen.rows : []));
    const stages = (first ?? []).flatMap(({ standing: { place } }) =>
      place.kind === 'attempt' ? [place.stage] : [],
    );
    expect(stages.some((stage) => stage !== null)).toBe(true);
    expect(second).toEqual(first);
  });

  test('a class that is no demonstration is shown as it is', async () => {
    await db().class.update({ where: { id: classId }, data: { isDemo: false } });
    expect(new Set((await statesOf(later(300))).values())).toEqual(new Set(['away']));
    await db().class.update({ where: { id: classId }, data: { isDemo: true } });
  });
});

describe('a second start', () => {
  test('adds nothing, and puts the printed sign-ins right again', async () => {
    const before = await db().attempt.count();
    const teachers = await db().teacher.count();
    await db().teacher.updateMany({ data: { passwordHash: await hashSecret('something else') } });
    await db().student.updateMany({ data: { secretHash: null } });
    expect(await seedDemo(monday)).toEqual(signIns);
    expect(await db().attempt.count()).toBe(before);
    expect(await db().teacher.count()).toBe(teachers);
    expect(valueOf(await checkPassword(signIns.teacher, origin)).teacherId).toBe(teacher.teacherId);
    valueOf(await checkCard(signIns.student, origin));
  });

  test('finds the demonstration where a school looks for it', async () => {
    expect(await hasDemoAccounts()).toBe(true);
  });
});

describe('a start after the class was deleted', () => {
  const spring = at('2027-03-01T09:00:00Z');
  const anHourOn = at('2027-03-01T10:00:00Z');
  /** One student, who is there when the class is made. */
  const small: typeof makeDemoClass = async (maker, clock) => {
    const named = { name: 'Small', timeZone: 'Europe/London' };
    const made = valueOf(await createClass(maker, named, clock));
    await db().class.update({ where: { id: made.classId }, data: { isDemo: true } });
    const [studentId = ''] = valueOf(await addStudents(maker, made.classId, ['Fern'])).studentIds;
    await openSession({ studentId }, { device: 'x', previousToken: null }, clock);
    return made.classId;
  };
  const stateOf = async (clock: Clock) => {
    const { id } = await db().class.findFirstOrThrow({ where: { isDemo: true } });
    const board = await getLiveBoard(teacher, id, readLiveOptions({}), clock);
    return board?.tiles.map(({ state }) => state);
  };

  test('makes it anew, with a lesson that goes on from then', async () => {
    await db().class.deleteMany({ where: { isDemo: true } });
    vi.mocked(makeDemoClass).mockImplementationOnce(small);
    await seedDemo(spring);
    expect(await stateOf(anHourOn)).toEqual(['here']);
    // The next start leaves it as it is.
    await seedDemo(anHourOn);
    expect(await stateOf(at('2027-03-01T11:00:00Z'))).toEqual(['here']);
  });

  test('that is broken off leaves nothing that would pass for whole', async () => {
    await db().class.deleteMany({ where: { isDemo: true } });
    vi.mocked(makeDemoClass).mockImplementationOnce(async (maker, clock) => {
      await small(maker, clock);
      throw new Error('power cut');
    });
    await expect(seedDemo(spring)).rejects.toThrow('power cut');
    const half = await db().class.findFirstOrThrow({ where: { isDemo: true } });
    vi.mocked(makeDemoClass).mockImplementationOnce(small);
    await seedDemo(spring);
    const whole = await db().class.findMany({ where: { isDemo: true } });
    expect(whole.map(({ id }) => id === half.id)).toEqual([false]);
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
