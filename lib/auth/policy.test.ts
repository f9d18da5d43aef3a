import { describe, expect, test } from 'vitest';
import {
  canCreateClass,
  canInviteTeacher,
  canIssueCard,
  canOwnClass,
  canReadNotes,
  canRunClass,
  canSeeAttempt,
  canSeeClass,
  canSeeResult,
  canTakeAssignment,
  canTakeFromClass,
  canTeachClass,
  canWorkOnAttempt,
  roleIn,
  type ClassAccess,
  type Viewer,
} from './policy';

const teacher = (teacherId: string): Viewer => ({
  kind: 'teacher',
  teacherId,
  displayName: teacherId,
});
const student = (studentId: string, classId: string): Viewer => ({
  kind: 'student',
  studentId,
  classId,
  displayName: studentId,
});
const cover = (classId: string): Viewer => ({
  kind: 'cover',
  coverId: `link to ${classId}`,
  classId,
  displayName: 'Cover teacher',
});
const viewers = {
  owner: teacher('owner'),
  teacher: teacher('teacher'),
  observer: teacher('observer'),
  stranger: teacher('stranger'),
  student: student('ann', 'class'),
  classmate: student('ben', 'class'),
  elsewhere: student('cy', 'other-class'),
  cover: cover('class'),
  coverElsewhere: cover('other-class'),
  anonymous: { kind: 'anonymous' },
} satisfies Record<string, Viewer>;

const schoolClass: ClassAccess = {
  id: 'class',
  members: [
    { teacherId: 'owner', role: 'owner' },
    { teacherId: 'teacher', role: 'teacher' },
    { teacherId: 'observer', role: 'observer' },
  ],
  archivedAt: null,
};
const archived: ClassAccess = { ...schoolClass, archivedAt: new Date('2026-07-20T12:00:00Z') };
const attempt = { student: { id: 'ann', class: schoolClass } };
const oldAttempt = { student: { id: 'ann', class: archived } };

const whoMay = (can: (viewer: Viewer) => boolean) =>
  Object.entries(viewers)
    .filter(([, viewer]) => can(viewer))
    .map(([name]) => name);

describe('who may', () => {
  test.each<[string, (viewer: Viewer) => boolean, string[]]>([
    ['make a class', canCreateClass, ['owner', 'teacher', 'observer', 'stranger']],
    [
      'see the class',
      (v) => canSeeClass(v, schoolClass),
      ['owner', 'teacher', 'observer', 'cover'],
    ],
    ['read notes and keys', (v) => canReadNotes(v, schoolClass), ['owner', 'teacher', 'observer']],
    ['change the class', (v) => canTeachClass(v, schoolClass), ['owner', 'teacher']],
    ['take files from the class', (v) => canTakeFromClass(v, schoolClass), ['owner', 'teacher']],
    ['let a student in', (v) => canIssueCard(v, schoolClass), ['owner', 'teacher', 'cover']],
    ['run the class', (v) => canRunClass(v, schoolClass), ['owner']],
    ['dispose of the class', (v) => canOwnClass(v, schoolClass), ['owner']],
    ['work on the attempt', (v) => canWorkOnAttempt(v, attempt), ['student']],
    [
      'see the attempt',
      (v) => canSeeAttempt(v, attempt),
      ['owner', 'teacher', 'observer', 'student', 'cover'],
    ],
    [
      'see the result at once',
      (v) => canSeeResult(v, { ...attempt, feedbackVisible: true }),
      ['owner', 'teacher', 'observer', 'student', 'cover'],
    ],
    [
      'see a result that is withheld',
      (v) => canSeeResult(v, { ...attempt, feedbackVisible: false }),
      ['owner', 'teacher', 'observer', 'cover'],
    ],
    [
      'take a published assignment',
      (v) => canTakeAssignment(v, { class: schoolClass, state: 'published' }),
      ['student', 'classmate'],
    ],
    ['take a draft', (v) => canTakeAssignment(v, { class: schoolClass, state: 'draft' }), []],
  ])('%s', (_, can, expected) => {
    expect(whoMay(can)).toEqual(expected);
  });
});

describe('of an archived class who may', () => {
  const readers = ['owner', 'teacher', 'observer'];
  test.each<[string, (viewer: Viewer) => boolean, string[]]>([
    ['see it', (v) => canSeeClass(v, archived), readers],
    ['read its notes and keys', (v) => canReadNotes(v, archived), readers],
    ['take files from it', (v) => canTakeFromClass(v, archived), ['owner', 'teacher']],
    ['dispose of it', (v) => canOwnClass(v, archived), ['owner']],
    ['see an attempt', (v) => canSeeAttempt(v, oldAttempt), readers],
    ['see a result', (v) => canSeeResult(v, { ...oldAttempt, feedbackVisible: true }), readers],
    ['change it', (v) => canTeachClass(v, archived), []],
    ['run it', (v) => canRunClass(v, archived), []],
    ['let a student in', (v) => canIssueCard(v, archived), []],
    ['work on an attempt', (v) => canWorkOnAttempt(v, oldAttempt), []],
    [
      'take a published assignment',
      (v) => canTakeAssignment(v, { class: archived, state: 'published' }),
      [],
    ],
  ])('%s', (_, can, expected) => {
    expect(whoMay(can)).toEqual(expected);
  });
});

test('a role belongs to the teacher of this class only', () => {
  expect(roleIn(viewers.observer, schoolClass)).toBe('observer');
  expect(roleIn(viewers.stranger, schoolClass)).toBeNull();
  expect(roleIn(viewers.student, schoolClass)).toBeNull();
  expect(roleIn(viewers.cover, schoolClass)).toBeNull();
});

test('a colleague is invited by whoever teaches or has no class yet, not by a mere observer', () => {
  const { owner } = viewers;
  expect(canInviteTeacher(owner, [])).toBe(true);
  expect(canInviteTeacher(owner, ['owner'])).toBe(true);
  expect(canInviteTeacher(owner, ['observer', 'teacher'])).toBe(true);
  expect(canInviteTeacher(owner, ['observer'])).toBe(false);
  expect(canInviteTeacher(owner, ['observer', 'observer'])).toBe(false);
  expect(whoMay((viewer) => canInviteTeacher(viewer, []))).toEqual([
    'owner',
    'teacher',
    'observer',
    'stranger',
  ]);
});
