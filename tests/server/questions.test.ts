import { beforeAll, describe, expect, test } from 'vitest';
import type { Skill } from '@/lib/course/skills';
import type { Clock } from '@/lib/data/clock';
import { db } from '@/lib/data/db';
import { answerQuestion, nextQuestion } from '@/lib/data/questions';
import { storedItemSchema } from '@/lib/data/stored-item';
import { loadItemWorld } from '@/lib/content/item-world';
import { rightAnswer, wrongAnswers } from '@/lib/items/answers-to-try';
import { drawItem } from '@/lib/items/draw-item';
import { gradeItem } from '@/lib/items/grade-item';
import { faceOfItem } from '@/lib/items/item-face';
import type { Item } from '@/lib/items/item';
import type { ItemAnswer } from '@/lib/items/item-answer';
import { familiesOf, itemBank } from '@/lib/items/item-bank';
import { useSchoolDatabase } from '../support/school-database';
import { at, codeOf, makeSchool, monday, valueOf, type School } from '../support/school';

useSchoolDatabase();
const lesson = 'level-enough';
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

const itemOf = async (id: string): Promise<Item> =>
  storedItemSchema.parse(
    (await db().askedQuestion.findUniqueOrThrow({ where: { id }, select: { item: true } })).item,
  );

/** One that earns less than a pass. */
function poorAnswer(item: Item): ItemAnswer {
  const found = [...wrongAnswers(item), { kind: 'numeric', text: '123456' } as const].find(
    (answer) => {
      const grading = gradeItem(item, answer);
      return grading.ok && grading.feedback.mark < 0.8;
    },
  );
  if (found === undefined) throw new Error('every question can be answered badly');
  return found;
}

describe('a question put to a student', () => {
  test('stays the same until it is answered, and shows nothing that tells the answer', async () => {
    const first = valueOf(await nextQuestion(school.ann, { lesson }, monday));
    const again = valueOf(await nextQuestion(school.ann, { lesson }, monday));
    expect(again).toEqual(first);
    const sent = JSON.stringify(first.face);
    for (const word of ['"key"', '"reason"', '"right":true', '"rules"', '"pairs"', '"slips"']) {
      expect(sent).not.toContain(word);
    }
    expect(await db().askedQuestion.count({ where: { studentId: school.ann.studentId } })).toBe(1);
  });

  test('is one, however many windows ask at once', async () => {
    const asked = await Promise.all(
      Array.from({ length: 5 }, () => nextQuestion(school.cy, { lesson }, monday)),
    );
    expect(new Set(asked.map((one) => valueOf(one).id)).size).toBe(1);
  });

  test('is another for another student', async () => {
    const rows = await db().askedQuestion.findMany({ select: { seed: true } });
    expect(new Set(rows.map(({ seed }) => seed)).size).toBe(rows.length);
  });

  test('is refused in words while it cannot be marked, and stays open', async () => {
    const { id } = valueOf(await nextQuestion(school.ann, { lesson }, monday));
    for (const input of [{}, null, 'yes', { kind: 'choice', option: 'a', mark: 1 }]) {
      const answer = await answerQuestion(school.ann, id, input, monday);
      expect(codeOf(answer)).toBe('bad-input');
      expect(answer.ok ? '' : answer.problem.message).toContain('still open');
    }
    const item = await itemOf(id);
    const empty: ItemAnswer =
      item.kind === 'numeric'
        ? { kind: 'numeric', text: ' ' }
        : item.kind === 'match'
          ? { kind: 'match', pairs: {} }
          : item.kind === 'order'
            ? { kind: 'order', steps: [] }
            : item.kind === 'several'
              ? { kind: 'several', options: [] }
              : { kind: item.kind, option: null };
    expect(codeOf(await answerQuestion(school.ann, id, empty, monday))).toBe('no-answer');
    expect(valueOf(await nextQuestion(school.ann, { lesson }, monday)).id).toBe(id);
  });

  test('is marked once: the first answer counts, whatever comes after it', async () => {
    const { id } = valueOf(await nextQuestion(school.ann, { lesson }, monday));
    const item = await itemOf(id);
    const first = valueOf(await answerQuestion(school.ann, id, poorAnswer(item), monday));
    expect(first.feedback.verdict).not.toBe('right');
    const later = at('2026-11-30T09:05:00Z');
    const again = valueOf(await answerQuestion(school.ann, id, rightAnswer(item), later));
    expect(again).toEqual(first);
    expect(await answerQuestion(school.ann, id, 'nonsense', later)).toEqual({
      ok: true,
      value: first,
    });
    const kept = await db().askedQuestion.findUniqueOrThrow({ where: { id } });
    expect(kept.mark).toBeCloseTo(100 * first.feedback.mark, 9);
    expect(kept.answeredAt).toEqual(monday.now());
  });

  test('is answered once by two that press together', async () => {
    const { id } = valueOf(await nextQuestion(school.cy, { lesson }, monday));
    const item = await itemOf(id);
    const both = await Promise.all([
      answerQuestion(school.cy, id, rightAnswer(item), monday),
      answerQuestion(school.cy, id, poorAnswer(item), monday),
    ]);
    expect(valueOf(both[0])).toEqual(valueOf(both[1]));
  });

  test('is nobody else’s', async () => {
    const { id } = valueOf(await nextQuestion(school.ann, { lesson }, monday));
    const answer = rightAnswer(await itemOf(id));
    const { ben, dee, owner, stranger, anonymous } = school;
    for (const viewer of [ben, dee, owner, stranger, anonymous]) {
      expect(codeOf(await answerQuestion(viewer, id, answer, monday))).toBe('not-found');
    }
    for (const viewer of [owner, stranger, anonymous]) {
      expect(codeOf(await nextQuestion(viewer, { lesson }, monday))).toBe('not-found');
    }
    expect(valueOf(await nextQuestion(school.ann, { lesson }, monday)).id).toBe(id);
  });
});

/** Answers questions of the lesson, all others rightly, until one of that skill is answered. */
async function answerOn(skill: Skill, right: boolean, clock: Clock) {
  for (let n = 0; n < 12; n += 1) {
    const { id, ...question } = valueOf(await nextQuestion(school.ben, { lesson }, clock));
    const item = await itemOf(id);
    const answer = right || question.skill !== skill ? rightAnswer(item) : poorAnswer(item);
    const outcome = valueOf(await answerQuestion(school.ben, id, answer, clock));
    expect(outcome.skill).toBe(question.skill);
    if (question.skill === skill) return { id, ...outcome };
  }
  throw new Error(`the lesson asks about ${skill}`);
}

test('three passed in a row are three different kinds, and the third brings mastery', async () => {
  for (const inARow of [1, 2, 3]) {
    const outcome = await answerOn('level', true, monday);
    expect(outcome.feedback.verdict).toBe('right');
    expect(outcome).toMatchObject({
      standing: { inARow },
      timeZone: 'Europe/London',
      brought: inARow === 3 ? 'mastery' : null,
    });
    if (inARow < 3) continue;
    expect(outcome.standing).toMatchObject({ state: 'mastered', masteredAt: monday.now() });
    const again = await answerQuestion(school.ben, outcome.id, {}, monday);
    expect(valueOf(again).brought).toBe('mastery');
  }
});

test('what comes after mastery brings it no more: a slip, a pass, a review', async () => {
  const tuesday = at('2026-12-01T09:00:00Z');
  const slip = await answerOn('level', false, tuesday);
  expect(slip).toMatchObject({ standing: { state: 'mastered' }, brought: null });
  const pass = await answerOn('level', true, tuesday);
  expect(pass).toMatchObject({ standing: { state: 'mastered' }, brought: null });
  const wednesday = at('2026-12-02T09:00:00Z');
  const review = await answerOn('level', true, wednesday);
  expect(review).toMatchObject({ standing: { reviewsPassed: 1 }, brought: 'review' });
  expect((await answerOn('level', true, wednesday)).brought).toBeNull();
});

/** The database's JSON column keeps fewer digits than a binary fraction has. */
const roughly = (item: unknown): string =>
  JSON.stringify(item, (_, value: unknown) =>
    typeof value === 'number' ? Number(value.toPrecision(12)) : value,
  );

describe('what is kept of a question', () => {
  test.each(itemBank.map((family) => [family.id, family] as const))(
    '%s comes back from its column as it was drawn: the same face, the same marks',
    (_, family) => {
      const world = loadItemWorld();
      for (const template of Object.keys(family.templates)) {
        const item = drawItem(family, template, { seed: 'kept', world });
        const read = storedItemSchema.parse(JSON.parse(JSON.stringify(item)));
        expect(faceOfItem(read)).toEqual(faceOfItem(item));
        for (const answer of [rightAnswer(item), ...wrongAnswers(item)]) {
          expect(gradeItem(read, answer)).toEqual(gradeItem(item, answer));
        }
      }
    },
  );

  test('is all it takes to draw it again', async () => {
    const rows = await db().askedQuestion.findMany();
    expect(rows.length).toBeGreaterThan(4);
    for (const row of rows) {
      const family = familiesOf(lesson).find(({ id }) => id === row.family);
      if (family === undefined) throw new Error('the family is in the bank');
      const again = drawItem(family, row.template, { seed: row.seed, world: loadItemWorld() });
      expect(roughly(row.item)).toBe(roughly(again));
      expect(row.generatorVersion).toBe(again.generatorVersion);
    }
  });
});
