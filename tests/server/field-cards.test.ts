import { beforeAll, describe, expect, test } from 'vitest';
import { db } from '@/lib/data/db';
import { getFieldCards, type ClassFieldCards } from '@/lib/data/field-cards';
import { getNightPlan } from '@/lib/data/night-plan';
import { getPrintedThings } from '@/lib/data/printed-things';
import { useSchoolDatabase } from '../support/school-database';
import { codeOf, makeSchool, monday, valueOf, type School } from '../support/school';

useSchoolDatabase();
let school: School;
let cards: ClassFieldCards;
beforeAll(async () => {
  school = await makeSchool();
  cards = valueOf(await getFieldCards(school.owner, school.classId, {}, monday));
});

describe('field cards', () => {
  test('and the list of printed things are for everybody who may see the class, and for nobody else', async () => {
    const { owner, colleague, observer, stranger, ann, anonymous, classId } = school;
    for (const viewer of [owner, colleague, observer]) {
      expect(codeOf(await getFieldCards(viewer, classId, {}, monday))).toBe('ok');
      expect(await getPrintedThings(viewer, classId)).not.toBeNull();
    }
    for (const viewer of [stranger, ann, anonymous]) {
      expect(codeOf(await getFieldCards(viewer, classId, {}, monday))).toBe('not-found');
      expect(await getPrintedThings(viewer, classId)).toBeNull();
    }
    expect(codeOf(await getFieldCards(owner, 'no-such-class', {}, monday))).toBe('not-found');
  });

  test('carry the pairs of the night plan of the same evening, each with its spare', async () => {
    const night = valueOf(await getNightPlan(school.owner, school.classId, {}, monday));
    const plan = await night.plan();
    if (!plan.ok) throw new Error(plan.reason);
    const { hours, goodLater } = plan.plan;
    expect(cards.cards.map(({ kitName }) => kitName)).toEqual(['Wren', 'Heron', 'Owl']);
    for (const { key, pairs } of cards.cards) {
      const begin = goodLater.find(({ kitId }) => kitId === key)?.later?.instant ?? '';
      const planned = hours
        .filter(({ instant }) => instant > begin)
        .map(({ instant, pairs: all }) => ({
          instant,
          pairs: all.find(({ kitId }) => kitId === key)?.pairs,
        }));
      expect(
        pairs
          .filter(({ instant }) => instant !== begin)
          .map(({ instant, pair, spare }) => ({
            instant,
            pairs: spare === null ? [pair] : [pair, spare],
          })),
      ).toEqual(planned);
    }
  });

  test('tell what is entered into the mount, by the zone’s own rules', async () => {
    // Keswick keeps UTC in winter and an hour more in summer.
    expect(cards.evening).toMatchObject({
      ok: true,
      entered: {
        zoneOffsetMinutes: 0,
        summerTime: false,
        latitudeDeg: 54.599,
        longitudeDeg: -3.132,
      },
    });
    const summer = valueOf(
      await getFieldCards(
        school.owner,
        school.classId,
        { date: '2027-04-20', ends: '23:30' },
        monday,
      ),
    );
    expect(summer.evening).toMatchObject({
      entered: { zoneOffsetMinutes: 0, summerTime: true },
    });
  });

  test('give the width of the field that the eyepiece has: apparent field over magnification', () => {
    // Wren, 500 mm: 25 mm is 20 times, so 50° become 2.5°; 9 mm is 55.6 times, 54′ (any first book of optics).
    const [wren] = cards.cards;
    expect(wren?.centring).toMatchObject({ focalLengthMm: 25 });
    expect(wren?.centring.fieldArcmin).toBeCloseTo(150, 6);
    expect(wren?.observing.fieldArcmin).toBeCloseTo(54, 6);
  });

  test('say why where there is no evening, and make no card', async () => {
    const none = valueOf(
      await getFieldCards(
        school.owner,
        school.classId,
        { date: '2027-06-20', ends: '20:00' },
        monday,
      ),
    );
    expect(none.evening).toEqual({ ok: false, reason: 'ends-before-sunset' });
    expect(none.cards).toEqual([]);
  });

  test('are one for each group that has a telescope, once groups have some', async () => {
    await db().group.createMany({
      data: [
        { classId: school.classId, name: 'Plough', kitId: 'owl' },
        { classId: school.classId, name: 'Lyre', kitId: 'owl' },
        { classId: school.classId, name: 'No telescope', kitId: null },
      ],
    });
    const shared = valueOf(await getFieldCards(school.owner, school.classId, {}, monday));
    expect(shared.cards.map(({ kitName, groupName }) => [kitName, groupName])).toEqual([
      ['Owl', 'Lyre'],
      ['Owl', 'Plough'],
    ]);
  });
});
