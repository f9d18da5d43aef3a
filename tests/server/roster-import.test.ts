import { beforeEach, describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { checkCard } from '@/lib/data/sign-in';
import { db } from '@/lib/data/db';
import { addStudents, issueCards, listRoster, setLeft } from '@/lib/data/roster';
import {
  commitRoster,
  getRosterSource,
  previewRoster,
  takeBackImport,
} from '@/lib/data/roster-import';
import type { RosterList } from '@/lib/data/roster-import-input';
import { extendDue } from '@/lib/data/gradebook';
import { openSession, viewerOfToken } from '@/lib/data/sessions';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  codeOf,
  makeSchool,
  monday,
  published,
  started,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();

let school: School;
beforeEach(async () => {
  school = await makeSchool();
});

const makeGroup = (studentId: string) =>
  db().group.create({
    data: { classId: school.classId, name: 'Owls', members: { create: { studentId } } },
  });

const listOf = (
  entries: readonly (readonly [name: string, sourcedId?: string])[],
  change: Partial<RosterList> = {},
): RosterList => ({
  completeness: 'some',
  classSourcedId: null,
  keepNames: false,
  entries: entries.map(([name, sourcedId], index) => ({
    row: index + 2,
    name,
    sourcedId: sourcedId ?? null,
  })),
  gone: [],
  ...change,
});
const wholeClass = (entries: Parameters<typeof listOf>[0], classSourcedId = '8a') =>
  listOf(entries, { completeness: 'whole-class', classSourcedId });

async function imported(list: RosterList, viewer: Viewer = school.owner) {
  const { fingerprint } = valueOf(await previewRoster(viewer, school.classId, list));
  return valueOf(await commitRoster(viewer, school.classId, list, fingerprint, monday));
}

/** The roster as a line each: card, name, id, left or not. */
async function rosterLines(): Promise<string[]> {
  const students = await db().student.findMany({
    where: { classId: school.classId },
    orderBy: { cardNumber: 'asc' },
  });
  return students.map(
    ({ cardNumber, displayName, sourcedId, leftAt }) =>
      `${String(cardNumber)} ${displayName} ${sourcedId ?? '-'}${leftAt === null ? '' : ' left'}`,
  );
}

describe('who may import a roster', () => {
  const list = listOf([['Eve', '5']]);
  test.each(['observer', 'stranger', 'ann', 'dee', 'anonymous'] as const)('not %s', async (who) => {
    const viewer = school[who];
    const before = await rosterLines();
    const { fingerprint } = valueOf(await previewRoster(school.owner, school.classId, list));
    expect(codeOf(await previewRoster(viewer, school.classId, list))).toBe('not-found');
    expect(codeOf(await commitRoster(viewer, school.classId, list, fingerprint))).toBe('not-found');
    expect(await getRosterSource(viewer, school.classId)).toBe(null);
    expect(codeOf(await setLeft(viewer, school.ben.studentId, true))).toBe('not-found');
    expect(await rosterLines()).toEqual(before);
    const { undo } = await imported(list);
    expect(codeOf(await takeBackImport(viewer, school.classId, undo))).toBe('not-found');
  });

  test('nor a substitute, who only reads', async () => {
    const cover = {
      kind: 'cover',
      coverId: 'link',
      classId: school.classId,
      displayName: 'Cover teacher',
    } as const;
    expect(codeOf(await previewRoster(cover, school.classId, list))).toBe('not-found');
    expect(codeOf(await setLeft(cover, school.ben.studentId, true))).toBe('not-found');
  });

  test('but the owner and a colleague', async () => {
    await imported(list);
    await imported(listOf([['Flo', '6']]), school.colleague);
    expect(await rosterLines()).toEqual(['1 Ann -', '2 Ben -', '3 Cy -', '4 Eve 5', '5 Flo 6']);
  });

  test('nobody, once the class is archived', async () => {
    await db().class.update({
      where: { id: school.classId },
      data: { archivedAt: monday.now() },
    });
    expect(codeOf(await previewRoster(school.owner, school.classId, list))).toBe('not-found');
  });
});

describe('an import', () => {
  test('does what the preview showed and says how much it was', async () => {
    const list = wholeClass([
      ['Ann', '1'],
      ['Benedict', '2'],
      ['Eve', '5'],
    ]);
    const preview = valueOf(await previewRoster(school.owner, school.classId, list));
    expect(preview.counts).toEqual({
      add: 2,
      rename: 0,
      back: 0,
      leave: 0,
      same: 1,
      untouched: 2,
    });
    expect(await rosterLines()).toEqual(['1 Ann -', '2 Ben -', '3 Cy -']);
    const { counts } = await imported(list);
    expect(counts).toEqual(preview.counts);
    expect(await rosterLines()).toEqual([
      '1 Ann 1',
      '2 Ben -',
      '3 Cy -',
      '4 Benedict 2',
      '5 Eve 5',
    ]);
    expect(await getRosterSource(school.owner, school.classId)).toBe('8a');
    const audit = await db().audit.findFirstOrThrow({
      where: { action: 'roster-imported', classId: school.classId },
    });
    expect(audit.after).toEqual(counts);
    expect(JSON.stringify(audit)).not.toContain('Benedict');
  });

  test('done twice is done once', async () => {
    const list = wholeClass([
      ['Ann', '1'],
      ['Ann', '2'],
      ['Eve', '5'],
    ]);
    await imported(list);
    const once = await rosterLines();
    const { counts } = await imported(list);
    expect(counts).toMatchObject({ add: 0, rename: 0, back: 0, leave: 0 });
    expect(await rosterLines()).toEqual(once);
  });

  test('keeps the work of who has left, and of who comes back', async () => {
    await imported(
      wholeClass([
        ['Ann', '1'],
        ['Ben', '2'],
        ['Cy', '3'],
      ]),
    );
    const attemptId = await started(school.ben, await published(school));
    await imported(
      wholeClass([
        ['Ann', '1'],
        ['Cy', '3'],
      ]),
    );
    expect(await rosterLines()).toEqual(['1 Ann 1', '2 Ben 2 left', '3 Cy 3']);
    expect(await db().attempt.count({ where: { id: attemptId } })).toBe(1);
    const { counts } = await imported(
      wholeClass([
        ['Ann', '1'],
        ['Ben', '2'],
        ['Cy', '3'],
      ]),
    );
    expect(counts.back).toBe(1);
    expect(await rosterLines()).toEqual(['1 Ann 1', '2 Ben 2', '3 Cy 3']);
  });

  test('is refused when the roster changed since the preview, and nothing happens', async () => {
    const list = wholeClass([['Eve', '5']]);
    const { fingerprint } = valueOf(await previewRoster(school.owner, school.classId, list));
    valueOf(await addStudents(school.colleague, school.classId, ['Eve']));
    const before = await rosterLines();
    const answer = await commitRoster(school.owner, school.classId, list, fingerprint, monday);
    expect(codeOf(answer)).toBe('roster-changed');
    expect(await rosterLines()).toEqual(before);
    expect(await getRosterSource(school.owner, school.classId)).toBe(null);
  });

  test('is refused when the list is another than the one previewed', async () => {
    const { fingerprint } = valueOf(
      await previewRoster(school.owner, school.classId, listOf([['Eve']])),
    );
    const other = listOf([['Flo']]);
    expect(codeOf(await commitRoster(school.owner, school.classId, other, fingerprint))).toBe(
      'roster-changed',
    );
    expect(await rosterLines()).toHaveLength(3);
  });

  test('takes nothing of a list with one faulty row, and names it', async () => {
    for (const [list, sentence] of [
      [listOf([['Eve'], ['=cmd']]), 'Row 3: This begins with ='],
      [listOf([['Eve'], ['x'.repeat(61)]]), 'Row 3: A name is longer'],
      [
        listOf([
          ['Eve', '1'],
          ['Flo', '1'],
        ]),
        'Row 3: the same id as row 2',
      ],
      [listOf(Array.from({ length: 501 }, (_, at) => [`S${String(at)}`])), 'at most 500'],
      [listOf(Array.from({ length: 498 }, (_, at) => [`S${String(at)}`])), 'it would be 501'],
      [listOf([], { completeness: 'whole-class' }), 'no student'],
      [{ entries: 'all' }, ''],
    ] as const) {
      const answer = await previewRoster(school.owner, school.classId, list);
      expect(answer.ok ? '' : answer.problem.message).toContain(sentence);
      expect(answer.ok).toBe(false);
    }
    expect(await rosterLines()).toHaveLength(3);
  });

  test('never reaches into another class that knows the same ids', async () => {
    const list = wholeClass([['Dee', '1']]);
    const { fingerprint } = valueOf(
      await previewRoster(school.stranger, school.otherClassId, list),
    );
    valueOf(await commitRoster(school.stranger, school.otherClassId, list, fingerprint));
    await imported(wholeClass([['Someone', '1']]));
    expect(await rosterLines()).toEqual(['1 Ann -', '2 Ben -', '3 Cy -', '4 Someone 1']);
    const dee = await db().student.findUniqueOrThrow({ where: { id: school.dee.studentId } });
    expect(dee).toMatchObject({ displayName: 'Dee', leftAt: null });
  });

  test('warns when it comes from another class of the file than last time', async () => {
    await imported(wholeClass([['Ann', '1']], '8a'));
    const other = await previewRoster(
      school.owner,
      school.classId,
      wholeClass([['Ann', '1']], '8b'),
    );
    expect(valueOf(other).fromAnotherClass).toBe(true);
  });
});

describe('taking an import back', () => {
  test('leaves the roster as it was', async () => {
    await imported(
      wholeClass([
        ['Ann', '1'],
        ['Ben', '2'],
        ['Cy', '3'],
      ]),
    );
    await imported(
      wholeClass([
        ['Ann', '1'],
        ['Ben', '2'],
      ]),
    );
    const before = await rosterLines();
    const { undo } = await imported(
      wholeClass(
        [
          ['Anna', '1'],
          ['Cy', '3'],
          ['Eve', '5'],
        ],
        '8b',
      ),
    );
    expect(await rosterLines()).toEqual(['1 Anna 1', '2 Ben 2 left', '3 Cy 3', '4 Eve 5']);
    valueOf(await takeBackImport(school.owner, school.classId, undo, monday));
    expect(await rosterLines()).toEqual(before);
    expect(await getRosterSource(school.owner, school.classId)).toBe('8a');
  });

  test('is refused once one of the new ones has worked', async () => {
    const { undo } = await imported(listOf([['Eve']]));
    const [studentId] = undo.added;
    const assignmentId = await published(school);
    const eve = { ...school.ann, studentId: studentId ?? '', displayName: 'Eve' };
    await started(eve, assignmentId);
    expect(codeOf(await takeBackImport(school.owner, school.classId, undo))).toBe('has-worked');
    expect(await rosterLines()).toHaveLength(4);
  });

  test.each<[string, (studentId: string) => Promise<unknown>]>([
    ['a group', (studentId) => makeGroup(studentId)],
    [
      'a due time of their own',
      async (studentId) => {
        const assignmentId = await published(school);
        const target = { studentId, assignmentId, dueAt: afterDue(24).now().toISOString() };
        return extendDue(school.owner, { ...target, note: 'New here.' }, monday);
      },
    ],
    [
      'an accommodation',
      (studentId) => db().accommodation.create({ data: { studentId, extraTime: '1.5' } }),
    ],
  ])('is refused once one of the new ones has %s', async (_, give) => {
    const { undo } = await imported(listOf([['Eve']]));
    await give(undo.added[0] ?? '');
    expect(codeOf(await takeBackImport(school.owner, school.classId, undo))).toBe('has-worked');
    expect(await rosterLines()).toHaveLength(4);
  });

  test('is refused once the roster changed again', async () => {
    const { undo } = await imported(
      wholeClass([
        ['Ann', '1'],
        ['Eve', '5'],
      ]),
    );
    await imported(wholeClass([['Ann', '1']], '8c'));
    expect(codeOf(await takeBackImport(school.owner, school.classId, undo))).toBe('roster-changed');
  });

  test('cannot be made to remove who was there before and has worked, or another class’s students', async () => {
    await started(school.ann, await published(school));
    const { undo } = await imported(listOf([['Eve']]));
    const forged = { ...undo, added: [school.ann.studentId, school.dee.studentId] };
    expect(codeOf(await takeBackImport(school.owner, school.classId, forged))).toBe('has-worked');
    const foreign = { ...undo, added: [school.dee.studentId] };
    expect(codeOf(await takeBackImport(school.owner, school.classId, foreign))).toBe(
      'roster-changed',
    );
    expect(await db().student.count({ where: { id: school.dee.studentId } })).toBe(1);
  });
});

describe('a student who has left', () => {
  test('is signed out, cannot sign in, and gets no card; and can when back', async () => {
    const [card] = valueOf(
      await issueCards(school.owner, school.classId, [school.ben.studentId], monday),
    );
    if (card === undefined) throw new Error('no card');
    const signIn = () =>
      checkCard(
        { classCode: card.classCode, cardNumber: String(card.cardNumber), words: card.words },
        { device: null, address: null },
        monday,
      );
    expect((await signIn()).ok).toBe(true);
    const token = await openSession(
      { studentId: school.ben.studentId },
      { device: 'Firefox', previousToken: null },
      monday,
    );
    valueOf(await setLeft(school.owner, school.ben.studentId, true, monday));
    expect((await viewerOfToken(token, monday)).kind).toBe('anonymous');
    expect(codeOf(await signIn())).toBe('sign-in-refused');
    const cards = valueOf(await issueCards(school.owner, school.classId, 'all', monday));
    expect(cards.map(({ displayName }) => displayName)).toEqual(['Ann', 'Cy']);
    expect(
      codeOf(await issueCards(school.owner, school.classId, [school.ben.studentId], monday)),
    ).toBe('not-found');
    valueOf(await setLeft(school.owner, school.ben.studentId, false, monday));
    expect((await signIn()).ok).toBe(true);
  });

  test('is signed out by an import too', async () => {
    await imported(
      wholeClass([
        ['Ann', '1'],
        ['Ben', '2'],
      ]),
    );
    const token = await openSession(
      { studentId: school.ben.studentId },
      { device: 'Firefox', previousToken: null },
      monday,
    );
    await imported(wholeClass([['Ann', '1']]));
    expect((await viewerOfToken(token, monday)).kind).toBe('anonymous');
  });

  test('stands last on the roster with the day, and the first day counts', async () => {
    valueOf(await setLeft(school.owner, school.ann.studentId, true, monday));
    valueOf(await setLeft(school.owner, school.ann.studentId, true));
    const roster = await listRoster(school.owner, school.classId);
    expect(roster?.map(({ displayName, leftAt }) => [displayName, leftAt])).toEqual([
      ['Ben', null],
      ['Cy', null],
      ['Ann', monday.now().toISOString()],
    ]);
  });
});
