import { beforeAll, describe, expect, test } from 'vitest';
import { createAssignment } from '@/lib/data/assignments';
import { getNightPlan } from '@/lib/data/night-plan';
import { useSchoolDatabase } from '../support/school-database';
import {
  assignmentInput,
  labPart,
  codeOf,
  makeSchool,
  monday,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

describe('a night plan', () => {
  test('is for everybody who may see the class, and for nobody else', async () => {
    const { owner, colleague, observer, stranger, ann, anonymous, classId } = school;
    for (const viewer of [owner, colleague, observer]) {
      expect(codeOf(await getNightPlan(viewer, classId, {}, monday))).toBe('ok');
    }
    for (const viewer of [stranger, ann, anonymous]) {
      expect(codeOf(await getNightPlan(viewer, classId, {}, monday))).toBe('not-found');
    }
    expect(codeOf(await getNightPlan(owner, 'no-such-class', {}, monday))).toBe('not-found');
  });

  test('is for tonight at the place that we begin with where nothing else is known', async () => {
    const plan = valueOf(await getNightPlan(school.owner, school.classId, {}, monday));
    expect(plan).toMatchObject({ localDate: '2026-11-30', endsAt: '22:30', placeName: 'Keswick' });
    expect(plan.plan.ok).toBe(true);
    expect(plan.fortnight.evenings).toHaveLength(14);
  });

  test('stands where the class’s newest assignment does, or where it is asked to', async () => {
    const input = { ...assignmentInput(), placeName: 'Somewhere else' };
    valueOf(await createAssignment(school.owner, school.classId, input, monday));
    const plan = valueOf(await getNightPlan(school.owner, school.classId, {}, monday));
    expect(plan.placeName).toBe('Somewhere else');
    const own = plan.sites.at(-1)?.id ?? '';
    const there = await getNightPlan(school.owner, school.classId, { site: own }, monday);
    expect(valueOf(there).placeName).toBe('Keswick');
  });

  test('does not stand where questions on lessons are set, which have no place', async () => {
    const before = valueOf(await getNightPlan(school.owner, school.classId, {}, monday));
    const questions = {
      ...assignmentInput(),
      parts: [labPart('lesson-questions', ['level-enough'])],
      placeName: 'Indoors',
    };
    valueOf(await createAssignment(school.owner, school.classId, questions, monday));
    const after = valueOf(await getNightPlan(school.owner, school.classId, {}, monday));
    expect(after.sites).toEqual(before.sites);
  });

  test.each([
    [{ date: '2026-02-31' }, 'date'],
    [{ ends: '25:00' }, 'ends'],
    [{ date: ['2026-12-01', '2026-12-02'] }, 'date'],
  ])('names the field that is wrong in %j', async (request, field) => {
    const refused = await getNightPlan(school.owner, school.classId, request, monday);
    expect(refused.ok ? null : refused.problem.field).toBe(field);
  });
});
