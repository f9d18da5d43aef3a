import { beforeAll, describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { lessonOfSkill } from '@/lib/course/lessons';
import { skills } from '@/lib/course/skills';
import { db } from '@/lib/data/db';
import { answerQuestion, nextQuestion } from '@/lib/data/questions';
import { storedItemSchema } from '@/lib/data/stored-item';
import { rightAnswer } from '@/lib/items/answers-to-try';
import { familiesOf } from '@/lib/items/item-bank';
import { useSchoolDatabase } from '../support/school-database';
import { makeSchool, monday, valueOf, type School } from '../support/school';

useSchoolDatabase();
const lesson = 'level-enough';
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

const itemOf = async (id: string) =>
  storedItemSchema.parse((await db().askedQuestion.findUniqueOrThrow({ where: { id } })).item);

describe('a question on one skill, for its review', () => {
  const asked = { lesson, skill: 'safety' } as const;
  const askedOf = async (viewer: Viewer, about: Parameters<typeof nextQuestion>[1]) =>
    valueOf(await nextQuestion(viewer, about, monday));

  test('comes before an open one on another skill, which waits for later', async () => {
    const level = await askedOf(school.ann, { lesson, skill: 'level' });
    expect(level.skill).toBe('level');
    const safety = await askedOf(school.ann, asked);
    expect(safety.skill).toBe('safety');
    expect((await askedOf(school.ann, asked)).id).toBe(safety.id);
    expect((await askedOf(school.ann, { lesson })).id).toBe(level.id);
    const answer = rightAnswer(await itemOf(safety.id));
    valueOf(await answerQuestion(school.ann, safety.id, answer, monday));
    expect((await askedOf(school.ann, { lesson })).id).toBe(level.id);
  });

  test('is followed by others on that skill alone, each of another kind', async () => {
    const kinds = familiesOf(lesson)
      .filter(({ skill }) => skill === 'safety')
      .flatMap(({ id, templates }) => Object.keys(templates).map((one) => `${id}/${one}`));
    const met = new Set<string>();
    for (let n = 0; n < Math.min(kinds.length, 6); n += 1) {
      const { id, skill } = await askedOf(school.ben, asked);
      expect(skill).toBe('safety');
      const item = await itemOf(id);
      met.add(`${item.family}/${item.template}`);
      valueOf(await answerQuestion(school.ben, id, rightAnswer(item), monday));
    }
    expect(met.size).toBe(Math.min(kinds.length, 6));
  });

  test('is one, and one on each skill, however many windows ask at once', async () => {
    const abouts = [asked, asked, { lesson, skill: 'level' } as const];
    const open = await Promise.all(abouts.map((about) => askedOf(school.ben, about)));
    expect(open.map(({ skill }) => skill)).toEqual(['safety', 'safety', 'level']);
    expect(new Set(open.map(({ id }) => id)).size).toBe(2);
  });

  test('is any of the lesson’s where the lesson does not ask about that skill', async () => {
    const { id } = await askedOf(school.ben, { lesson });
    expect((await askedOf(school.ben, { lesson, skill: 'power' })).id).toBe(id);
  });

  test.each(skills)('can be asked in the lesson on it: %s', (skill) => {
    const of = familiesOf(lessonOfSkill(skill).slug).filter((family) => family.skill === skill);
    expect(of.flatMap(({ templates }) => Object.keys(templates)).length).toBeGreaterThan(2);
  });
});
