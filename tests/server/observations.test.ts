import { beforeEach, describe, expect, it, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { db } from '@/lib/data/db';
import { recordObservations, signedOffSkills } from '@/lib/data/observations';
import { getSignOffSheet, setSignOffLevel } from '@/lib/data/sign-off-sheet';
import { signOffStandings } from '@/lib/data/sign-off-standings';
import type { OutgoingNote } from '@/lib/mastery/sign-off-note';
import { useSchoolDatabase } from '../support/school-database';
import { at, codeOf, makeSchool, valueOf, type School } from '../support/school';

useSchoolDatabase();
/** The morning after: everything noted on the evening of 4 December has been. */
const morning = at('2026-12-05T08:00:00Z');
let school: School;
let made = 0;
beforeEach(async () => {
  school = await makeSchool();
});

const newKey = (): string => (made += 1).toString(16).padStart(32, '0');
const note = (change: Partial<OutgoingNote> = {}): OutgoingNote => ({
  kind: 'note',
  key: newKey(),
  studentId: school.ann.studentId,
  skill: 'level',
  level: 3,
  gates: [],
  prompts: 0,
  note: '',
  instrument: 'Wren',
  over: null,
  conditions: { light: 'night', cloud: 'clear' },
  observedAt: '2026-12-04T20:00:00.000Z',
  ...change,
});
const send = async (items: readonly unknown[], viewer: Viewer = school.owner, clock = morning) =>
  valueOf(await recordObservations(viewer, school.classId, items, clock));
const outcomes = async (items: readonly unknown[], viewer?: Viewer) =>
  (await send(items, viewer)).map(({ outcome }) => outcome);
const sheet = async (viewer: Viewer = school.owner) => {
  const found = await getSignOffSheet(viewer, school.classId, morning);
  if (found === null) throw new Error('no sheet');
  return found;
};
const standing = async () => [
  ...((await signedOffSkills(school.classId)).get(school.ann.studentId) ?? []),
];

describe('who may', () => {
  test('note: the class’s owner and teachers', async () => {
    for (const viewer of [school.owner, school.colleague]) {
      expect(await outcomes([note()], viewer)).toEqual(['stored']);
    }
    for (const viewer of [
      school.observer,
      school.stranger,
      school.ann,
      school.dee,
      school.anonymous,
    ]) {
      const answer = await recordObservations(viewer, school.classId, [note()], morning);
      expect(codeOf(answer)).toBe('not-found');
      expect(codeOf(await setSignOffLevel(viewer, school.classId, 4, morning))).toBe('not-found');
    }
    expect(await db().observation.count({ where: { student: { classId: school.classId } } })).toBe(
      2,
    );
  });

  test('read: they and the observer, who cannot write', async () => {
    await send([note()]);
    expect((await sheet(school.owner)).teacherId).toBe(school.owner.teacherId);
    expect(await sheet(school.observer)).toMatchObject({
      teacherId: null,
      notes: [{ mine: false }],
    });
    expect(await sheet(school.colleague)).toMatchObject({ notes: [{ mine: false, level: 3 }] });
    for (const viewer of [school.stranger, school.ann, school.dee, school.anonymous]) {
      expect(await getSignOffSheet(viewer, school.classId, morning)).toBeNull();
    }
  });

  test('take back: the assessor their own, the owner anybody’s, no colleague another’s', async () => {
    const [mine, theirs] = [note(), note({ skill: 'align' })];
    await send([mine], school.owner);
    await send([theirs], school.colleague);
    const back = (key: string) => ({ kind: 'take-back', key, restores: [] });
    await send([back(mine.key)], school.colleague);
    expect((await sheet()).notes).toHaveLength(2);
    await send([back(theirs.key)], school.owner);
    expect((await sheet()).notes.map(({ key }) => key)).toEqual([mine.key]);
  });

  test('a student of another class is refused, and so is a number that another note has', async () => {
    const sent = note();
    await send([sent]);
    const [stranger, taken] = [note({ studentId: school.dee.studentId }), { ...sent, level: 4 }];
    expect(await outcomes([stranger])).toEqual(['refused']);
    expect(await outcomes([taken], school.colleague)).toEqual(['refused']);
    expect((await sheet()).notes).toMatchObject([{ level: 3 }]);
  });
});

describe('a note', () => {
  it('is stored with all that was said, when it was seen and when it came', async () => {
    const sent = note({ prompts: 2, gates: ['fingers-in-legs'], note: 'tray forgotten' });
    await send([sent]);
    expect(await db().observation.findUniqueOrThrow({ where: { key: sent.key } })).toMatchObject({
      level: 3,
      prompts: 2,
      gates: ['fingers-in-legs'],
      note: 'tray forgotten',
      instrument: 'Wren',
      conditions: { light: 'night', cloud: 'clear' },
      observedAt: new Date(sent.observedAt),
      receivedAt: morning.now(),
      assessorId: school.owner.teacherId,
      retractedAt: null,
    });
  });

  it('that is sent twice is one, and says so', async () => {
    const sent = note();
    expect(await outcomes([sent])).toEqual(['stored']);
    expect(await outcomes([sent, sent])).toEqual(['already-there', 'already-there']);
    expect((await sheet()).notes).toHaveLength(1);
  });

  it('that is sent twice at the same instant is one', async () => {
    const sent = note();
    const both = await Promise.all([send([sent]), send([sent])]);
    expect(
      both
        .flat()
        .map(({ outcome }) => outcome)
        .toSorted(),
    ).toEqual(['already-there', 'stored']);
  });

  it('that says the same as one of that evening is there already', async () => {
    expect(await outcomes([note(), note({ observedAt: '2026-12-05T00:30:00.000Z' })])).toEqual([
      'stored',
      'already-there',
    ]);
  });

  it('from a whole group is a note for each', async () => {
    const three = [school.ann, school.ben, school.cy].map(({ studentId }) => note({ studentId }));
    expect(await outcomes(three)).toEqual(['stored', 'stored', 'stored']);
    expect((await sheet()).notes.map(({ studentId }) => studentId).toSorted()).toEqual(
      three.map(({ studentId }) => studentId).toSorted(),
    );
  });

  it('that cannot be kept hinders none of the others', async () => {
    const bad = { ...note(), level: 5 };
    const gate = note({ skill: 'balance', gates: ['wrong-supply'] });
    const future = note({ observedAt: '2026-12-05T09:00:00.000Z' });
    const old = note({ observedAt: '2020-12-05T09:00:00.000Z' });
    expect(await outcomes([bad, gate, future, old, note()])).toEqual([
      ...['refused', 'refused', 'refused', 'refused', 'stored'],
    ]);
    expect(codeOf(await recordObservations(school.owner, school.classId, [{}], morning))).toBe(
      'bad-input',
    );
  });

  it('typed in from paper counts at eight on the class’s clock of its evening', async () => {
    const summer = note({ observedAt: '2026-07-04' });
    const today = note({ observedAt: '2026-12-05', skill: 'align' });
    expect(await outcomes([summer, today])).toEqual(['stored', 'refused']);
    const row = await db().observation.findUniqueOrThrow({ where: { key: summer.key } });
    // British Summer Time is an hour ahead of UTC.
    expect(row.observedAt.toISOString()).toBe('2026-07-04T19:00:00.000Z');
    const clock = at('2026-12-05T18:00:00Z');
    expect(await send([note({ observedAt: '2026-12-05' })], school.owner, clock)).toMatchObject([
      { outcome: 'stored', known: { evening: '2026-12-05' } },
    ]);
  });

  it('typed in from paper in the afternoon is not of that day’s night, which has not begun', async () => {
    const typedAt = async (clock: string, light: 'night' | 'day') => {
      const typed = note({ observedAt: '2026-07-03', conditions: { light, cloud: 'clear' } });
      return (await send([typed], school.owner, at(clock))).map(({ outcome }) => outcome);
    };
    // A minute before four, and four o'clock, on the class's clock, which is an hour ahead of UTC in July.
    expect(await typedAt('2026-07-03T14:59:00Z', 'night')).toEqual(['refused']);
    expect(await typedAt('2026-07-03T15:00:00Z', 'night')).toEqual(['stored']);
    await db().observation.deleteMany();
    expect(await typedAt('2026-07-03T09:00:00Z', 'day')).toEqual(['stored']);
  });
});

describe('two notes of one assessor, student, skill and evening that differ', () => {
  test('are a conflict that is shown and changes nothing', async () => {
    const [first, second] = [note({ level: 2 }), note({ level: 4 })];
    await send([first]);
    expect(await send([second])).toMatchObject([
      { outcome: 'conflict', key: second.key, existing: [{ key: first.key, level: 2 }] },
    ]);
    expect((await sheet()).notes).toMatchObject([{ level: 2 }]);
  });

  test('are settled by taking the new: the old is kept for the trail', async () => {
    const first = note({ level: 2 });
    await send([first]);
    const second = note({ level: 4, over: { keys: [first.key], how: 'replace' } });
    expect(await send([second])).toMatchObject([{ outcome: 'stored', gone: [first.key] }]);
    expect((await sheet()).notes).toMatchObject([{ level: 4 }]);
    const old = await db().observation.findUniqueOrThrow({ where: { key: first.key } });
    expect(old.retractedAt).toEqual(morning.now());
    const trail = await db().audit.findMany({
      where: { classId: school.classId, action: 'observation-taken-back' },
    });
    expect(trail).toMatchObject([{ before: { level: 2 }, teacherId: school.owner.teacherId }]);
  });

  test('are settled by keeping both, and are one evening all the same', async () => {
    const first = note({ level: 3 });
    await send([first, note({ level: 4, over: { keys: [first.key], how: 'beside' } })]);
    expect((await sheet()).notes).toHaveLength(2);
    expect(await standing()).toEqual([]);
  });

  test('are none on another evening, for another skill, student or assessor', async () => {
    await send([note({ level: 2 })]);
    const others = [
      note({ level: 4, observedAt: '2026-12-03T20:00:00.000Z' }),
      note({ level: 4, skill: 'align' }),
      note({ level: 4, studentId: school.ben.studentId }),
    ];
    expect(await outcomes(others)).toEqual(['stored', 'stored', 'stored']);
    expect(await outcomes([note({ level: 4 })], school.colleague)).toEqual(['stored']);
  });
});

test('two phones that were both without a connection overwrite nothing, and each is told', async () => {
  const first = note({ level: 2 });
  const second = note({ level: 4, observedAt: '2026-12-04T20:05:00.000Z' });
  const colleagues = note({ level: 1, gates: ['leg-left-open'] });
  await send([first]);
  // The same teacher's other phone has to ask; a colleague's stands beside.
  expect(await outcomes([second])).toEqual(['conflict']);
  expect(await send([colleagues], school.colleague)).toMatchObject([
    {
      outcome: 'stored',
      known: { level: 1, mine: true },
      gone: [],
      colleagues: [{ key: first.key, level: 2, mine: false }],
    },
  ]);
  expect((await sheet()).notes.map(({ key }) => key).toSorted()).toEqual(
    [first.key, colleagues.key].toSorted(),
  );
});

test('a note that waited on a device while the student left is kept with the student’s work', async () => {
  await db().student.update({
    where: { id: school.ann.studentId },
    data: { leftAt: morning.now() },
  });
  expect(await outcomes([note()])).toEqual(['stored']);
});

test('undoing a note that took another’s place brings the other back, however often it is sent', async () => {
  const first = note({ level: 2 });
  const second = note({ level: 4, over: { keys: [first.key], how: 'replace' } });
  await send([first, second]);
  const undo = { kind: 'take-back', key: second.key, restores: [first.key] };
  expect(await send([undo])).toMatchObject([{ outcome: 'taken-back', back: [{ level: 2 }] }]);
  expect(await outcomes([undo])).toEqual(['taken-back']);
  expect((await sheet()).notes).toMatchObject([{ level: 2 }]);
  // The note itself, sent once more by a device that had not heard, stays taken back.
  expect(await send([second])).toMatchObject([{ outcome: 'already-there', known: null }]);
});

describe('undoing a note brings back nothing', () => {
  const clockOf = (minute: number) => at(`2026-12-05T08:0${String(minute)}:00Z`);
  const over = (...keys: string[]) => ({ keys, how: 'replace' as const });
  const undo = (key: string, ...restores: string[]) => ({ kind: 'take-back', key, restores });
  const levels = async () => (await sheet()).notes.map(({ level }) => level);

  test('when the note has itself been replaced since, from another phone', async () => {
    const a = note({ level: 1 });
    const b = note({ level: 2, over: over(a.key) });
    const c = note({ level: 4, over: over(b.key) });
    await send([a], school.owner, clockOf(1));
    await send([b], school.owner, clockOf(2));
    await send([c], school.owner, clockOf(3));
    const answer = await send([undo(b.key, a.key)], school.owner, clockOf(4));
    expect(answer).toMatchObject([{ outcome: 'taken-back', back: [] }]);
    expect(await levels()).toEqual([4]);
  });

  test('that it had not taken the place of', async () => {
    const gone = note({ level: 1 });
    await send([gone], school.owner, clockOf(1));
    await send([undo(gone.key)], school.owner, clockOf(2));
    const other = note({ level: 2, skill: 'align' });
    const otherNext = note({ level: 3, skill: 'align', over: over(other.key) });
    await send([other], school.owner, clockOf(3));
    await send([note({ level: 4 }), otherNext], school.owner, clockOf(4));
    const [mine] = (await sheet()).notes.filter(({ skill }) => skill === 'level');
    await send([undo(mine?.key ?? '', gone.key, other.key)], school.owner, clockOf(5));
    expect(await levels()).toEqual([3]);
  });
});

describe('signed off', () => {
  const two = () => [note({ observedAt: '2026-12-03T20:00:00.000Z' }), note()];

  test('is who was seen on two evenings at the level', async () => {
    await send(two().slice(0, 1));
    expect(await standing()).toEqual([]);
    await send(two());
    expect(await standing()).toEqual(['level']);
  });

  test('follows the level that the class needs', async () => {
    await send(two());
    valueOf(await setSignOffLevel(school.colleague, school.classId, 4, morning));
    expect(await standing()).toEqual([]);
    expect((await sheet()).needed).toBe(4);
    expect(codeOf(await setSignOffLevel(school.owner, school.classId, 2, morning))).toBe(
      'bad-input',
    );
  });

  test('is nobody whose second evening failed a gate, or was taken back', async () => {
    const [first, second] = two();
    await send([first, { ...second, gates: ['leg-left-open'] }]);
    expect(await standing()).toEqual([]);
    const third = note({ observedAt: '2026-12-02T20:00:00.000Z' });
    await send([third]);
    expect(await standing()).toEqual(['level']);
    await send([{ kind: 'take-back', key: third.key, restores: [] }]);
    expect(await standing()).toEqual([]);
  });
});

test('standings of one student say nothing of another', async () => {
  await send([note(), note({ studentId: school.ben.studentId, skill: 'align' })]);
  const all = await signOffStandings(school.classId);
  const anns = await signOffStandings(school.classId, school.ann.studentId);
  expect([...all.keys()].toSorted()).toEqual(
    [school.ann.studentId, school.ben.studentId].toSorted(),
  );
  expect([...anns]).toEqual([[school.ann.studentId, all.get(school.ann.studentId)]]);
});

describe('two assessors', () => {
  const skillsSeen = ['kit', 'level', 'balance', 'align'] as const;
  const rate = async (mine: readonly number[], theirs: readonly number[]) => {
    const notes = (levels: readonly number[]) =>
      skillsSeen.map((skill, index) => ({ ...note({ skill }), level: levels[index] }));
    await send(notes(mine), school.owner);
    await send(notes(theirs), school.colleague);
    return (await sheet()).agreement;
  };

  test('have no agreement while they have seen nothing together', async () => {
    await send([note()]);
    await send([note({ observedAt: '2026-12-03T20:00:00.000Z' })], school.colleague);
    expect((await sheet()).agreement).toBeNull();
  });

  test('who agree throughout on different levels have κ = 1', async () => {
    expect(await rate([1, 2, 3, 4], [1, 2, 3, 4])).toMatchObject({
      pairs: 4,
      alike: 1,
      weighted: 1,
      table: [
        [1, 0, 0, 0],
        [0, 1, 0, 0],
        [0, 0, 1, 0],
        [0, 0, 0, 1],
      ],
    });
  });

  // Worked by hand from Cohen (1968): disagreement found (1+1)/4; by chance Σ(i−j)² over all 16 pairs / 16 = 2.5.
  test('who swap two neighbours have κ = 1 − 0.5/2.5, and half alike', async () => {
    const agreement = await rate([1, 2, 3, 4], [1, 3, 2, 4]);
    expect(agreement).toMatchObject({ pairs: 4, alike: 0.5 });
    expect(agreement?.weighted).toBeCloseTo(0.8, 12);
  });

  test('who give one level only have no κ, however much they agree', async () => {
    expect(await rate([3, 3, 3, 3], [3, 3, 3, 3])).toMatchObject({
      pairs: 4,
      alike: 1,
      weighted: null,
    });
  });
});

test('a student who left is not on the sheet, and what was seen is kept', async () => {
  await send([note()]);
  await db().student.update({
    where: { id: school.ann.studentId },
    data: { leftAt: morning.now() },
  });
  const { students, notes } = await sheet();
  expect(students.map(({ displayName }) => displayName)).toEqual(['Ben', 'Cy']);
  expect(notes).toEqual([]);
  expect(await db().observation.count({ where: { studentId: school.ann.studentId } })).toBe(1);
});

test('an archived class takes no notes and is still read', async () => {
  await send([note()]);
  await db().class.update({
    where: { id: school.classId },
    data: { archivedAt: morning.now() },
  });
  const answer = await recordObservations(school.owner, school.classId, [note()], morning);
  expect(codeOf(answer)).toBe('not-found');
  expect(await sheet()).toMatchObject({ teacherId: null, notes: [{ level: 3 }] });
});
