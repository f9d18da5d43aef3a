import { beforeAll, describe, expect, test } from 'vitest';
import { createAssignment } from '@/lib/data/assignments';
import { db } from '@/lib/data/db';
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
    expect((await plan.plan()).ok).toBe(true);
    expect((await plan.fortnight()).evenings).toHaveLength(14);
    // Reckoned once: whoever asks again is given the same.
    const again = valueOf(await getNightPlan(school.colleague, school.classId, {}, monday));
    expect(await again.plan()).toBe(await plan.plan());
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

  describe('in another town', () => {
    const town = (name: string) =>
      getNightPlan(school.owner, school.classId, { town: name }, monday);
    const row = {
      name: 'Quito',
      foldedName: 'quito',
      foldedAscii: 'quito',
      country: 'EC',
      region: '18',
      latitudeDeg: -0.23,
      longitudeDeg: -78.52,
      elevationM: 2850,
      timeZone: 'America/Guayaquil',
      population: 1_400_000,
    };
    beforeAll(async () => {
      const small = { id: 2, population: 900, name: 'Quitos', timeZone: 'Asia/Manila' };
      await db().place.createMany({
        data: [
          { ...row, id: 1 },
          { ...row, ...small, country: 'PH', foldedName: 'quitos', foldedAscii: 'quitos' },
        ],
      });
    });

    test('stands at the first of that name, offers the others, and keeps the place in its address', async () => {
      const found = valueOf(await town('QUITO'));
      expect(found).toMatchObject({ placeName: 'Quito', timeZone: 'America/Guayaquil' });
      expect(found.otherTowns.map(({ label }) => label)).toEqual(['Quitos, Philippines']);
      const again = { site: found.siteId };
      const kept = valueOf(await getNightPlan(school.owner, school.classId, again, monday));
      expect(kept).toMatchObject({ placeName: 'Quito', siteId: found.siteId, otherTowns: [] });
      // With each of the three skylines.
      expect(kept.sites.filter(({ label }) => label.startsWith('Quito,'))).toHaveLength(3);
    });

    test('says when there is none of that name', async () => {
      const refused = await town('Nowhere at all');
      expect(refused.ok ? null : refused.problem.field).toBe('town');
    });

    test('that is not there any more, the class stands where it otherwise does', async () => {
      const gone = { site: 'at-99-open-field' };
      const plan = valueOf(await getNightPlan(school.owner, school.classId, gone, monday));
      expect(plan.placeName).not.toBe('Quito');
    });
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
