import { beforeEach, describe, expect, test } from 'vitest';
import { db } from '@/lib/data/db';
import { getGroups, saveGroups, type ClassGroups } from '@/lib/data/groups';
import { useSchoolDatabase } from '../support/school-database';
import { codeOf, makeSchool, monday, published, valueOf, type School } from '../support/school';

useSchoolDatabase();

let school: School;
beforeEach(async () => {
  school = await makeSchool();
});

const read = async (): Promise<ClassGroups> => {
  const groups = await getGroups(school.owner, school.classId);
  if (groups === null) throw new Error('the owner sees the groups');
  return groups;
};
const group = (name: string, studentIds: string[] = [], kitId: string | null = null) => ({
  groupId: null as string | null,
  name,
  kitId,
  studentIds,
});
const save = async (groups: ReturnType<typeof group>[], version?: string) =>
  saveGroups(
    school.owner,
    school.classId,
    { version: version ?? (await read()).version, groups },
    monday,
  );
const shape = ({ groups, withoutGroup }: ClassGroups) => ({
  groups: groups.map(({ name, kitId, students }) => [
    name,
    kitId,
    students.map(({ displayName }) => displayName).join(' '),
  ]),
  none: withoutGroup.map(({ displayName }) => displayName).join(' '),
});
const again = ({ groups }: ClassGroups) =>
  groups.map(({ groupId, name, kitId, students }) => ({
    groupId,
    name,
    kitId,
    studentIds: students.map(({ studentId }) => studentId),
  }));

test('groups are made with their telescope, and the rest stand in none', async () => {
  const { ann, cy } = school;
  const saved = valueOf(
    await save([group('Table 10', [cy.studentId]), group('Table 9', [ann.studentId], 'wren')]),
  );
  expect(shape(saved)).toEqual({
    groups: [
      ['Table 9', 'wren', 'Ann'],
      ['Table 10', null, 'Cy'],
    ],
    none: 'Ben',
  });
  expect(await read()).toEqual(saved);
});

test('renaming, swapping names and moving keep the groups themselves', async () => {
  const { ann, ben } = school;
  const first = valueOf(await save([group('A', [ann.studentId]), group('B', [ben.studentId])]));
  const [a, b] = again(first);
  if (a === undefined || b === undefined) throw new Error('two were saved');
  const second = valueOf(
    await save([
      { ...a, name: 'B', studentIds: [ben.studentId] },
      { ...b, name: 'A', studentIds: [ann.studentId] },
    ]),
  );
  expect(second.groups.map(({ groupId, name }) => [groupId, name])).toEqual([
    [b.groupId, 'A'],
    [a.groupId, 'B'],
  ]);
});

test('what is left out is deleted; wanted back, it is a new one of that name', async () => {
  const { ann } = school;
  const first = valueOf(await save([group('A', [ann.studentId], 'owl')]));
  expect(shape(valueOf(await save([]))).groups).toEqual([]);
  const back = valueOf(await save(again(first)));
  expect(shape(back)).toEqual(shape(first));
  expect(back.groups[0]?.groupId).not.toBe(first.groups[0]?.groupId);
});

test('a later due time goes with its group, and the page can say so before', async () => {
  const assignmentId = await published(school);
  const first = valueOf(await save([group('A')]));
  const groupId = first.groups[0]?.groupId ?? '';
  const facts = { dueAt: monday.now(), note: 'n', changedAt: monday.now() };
  await db().extension.create({ data: { assignmentId, groupId, ...facts } });
  expect((await read()).groups[0]?.extensionCount).toBe(1);
  valueOf(await save([]));
  expect(await db().extension.count({ where: { assignmentId } })).toBe(0);
});

test('two teachers do not undo each other unawares', async () => {
  const { version } = await read();
  valueOf(await save([group('Mine')], version));
  const late = { version, groups: [group('Theirs')] };
  expect(codeOf(await saveGroups(school.colleague, school.classId, late, monday))).toBe(
    'changed-meanwhile',
  );
  expect(shape(await read()).groups).toEqual([['Mine', null, '']]);
});

describe('refused, with nothing changed:', () => {
  test.each<[string, () => ReturnType<typeof group>[], string]>([
    [
      'a student in two groups',
      () => [group('A', [school.ann.studentId]), group('B', [school.ann.studentId])],
      'in-two-groups',
    ],
    [
      'a student twice in one',
      () => [group('A', [school.ann.studentId, school.ann.studentId])],
      'in-two-groups',
    ],
    ['a student of another class', () => [group('A', [school.dee.studentId])], 'not-found'],
    ['two groups of one name', () => [group('Wren'), group('wren ')], 'name-taken'],
    ['a group without a name', () => [group('  ')], 'bad-input'],
    ['an unknown telescope', () => [group('A', [], 'hubble')], 'bad-input'],
    [
      'more groups than a class can have',
      () => Array.from({ length: 41 }, (_, index) => group(`G${index}`)),
      'bad-input',
    ],
  ])('%s', async (_, groups, code) => {
    const before = valueOf(await save([group('Before', [school.ben.studentId])]));
    expect(codeOf(await save(groups()))).toBe(code);
    expect(await read()).toEqual(before);
  });

  test('the id of another class’s group makes a new one and leaves that alone', async () => {
    const theirs = valueOf(
      await saveGroups(
        school.stranger,
        school.otherClassId,
        {
          version: (await getGroups(school.stranger, school.otherClassId))?.version ?? '',
          groups: [group('Theirs', [school.dee.studentId])],
        },
        monday,
      ),
    );
    const groupId = theirs.groups[0]?.groupId ?? null;
    const mine = valueOf(await save([{ ...group('Mine'), groupId }]));
    expect(mine.groups[0]?.groupId).not.toBe(groupId);
    expect(await getGroups(school.stranger, school.otherClassId)).toEqual(theirs);
  });
});

test('whoever left is in no list, cannot be put anywhere, and finds the group again', async () => {
  const { ann, ben } = school;
  const first = valueOf(await save([group('A', [ann.studentId, ben.studentId])]));
  const left = (leftAt: Date | null) =>
    db().student.update({ where: { id: ben.studentId }, data: { leftAt } });
  await left(monday.now());
  expect(shape(await read())).toEqual({ groups: [['A', null, 'Ann']], none: 'Cy' });
  expect(codeOf(await save(again(first)))).toBe('not-found');
  valueOf(await save(again(await read())));
  await left(null);
  expect(shape(await read())).toEqual(shape(first));
});

test('the audit tells groups and sizes, never who; a save that changes nothing tells nothing', async () => {
  const { ann, ben } = school;
  const saved = valueOf(await save([group('A', [ann.studentId, ben.studentId], 'heron')]));
  valueOf(await save(again(saved)));
  const rows = await db().audit.findMany({
    where: { classId: school.classId, action: 'groups-changed' },
    select: { teacherId: true, before: true, after: true },
  });
  expect(rows).toEqual([
    {
      teacherId: school.owner.teacherId,
      before: [],
      after: [{ name: 'A', kitId: 'heron', students: 2 }],
    },
  ]);
});

test('200 students and 40 groups are saved in one go', async () => {
  await db().student.createMany({
    data: Array.from({ length: 200 }, (_, index) => ({
      classId: school.classId,
      displayName: `S${index}`,
      cardNumber: 100 + index,
    })),
  });
  const { withoutGroup } = await read();
  const groups = Array.from({ length: 40 }, (_, place) =>
    group(
      `G${place}`,
      withoutGroup.filter((_, index) => index % 40 === place).map(({ studentId }) => studentId),
    ),
  );
  expect(valueOf(await save(groups)).withoutGroup).toEqual([]);
});
