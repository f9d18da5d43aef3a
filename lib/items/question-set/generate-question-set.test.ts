import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { course, type LessonSlug } from '../../course/lessons';
import { choice } from '../build-item';
import type { ItemFamily } from '../item-family';
import { generateQuestionSet } from './generate-question-set';

/** A plain question, told apart by its family and template alone. */
const family = (id: string, lesson: LessonSlug, objective: string): ItemFamily => ({
  id,
  lesson,
  objective,
  skill: 'kit',
  title: id,
  version: 1,
  templates: Object.fromEntries(
    ['one', 'two', 'three', 'four'].map((template) => [
      template,
      () =>
        choice({
          prompt: `${id}, ${template}?`,
          explanation: 'So it is.',
          right: { text: 'yes', reason: 'Right.' },
          wrong: [
            { text: 'no', reason: 'Wrong.' },
            { text: 'perhaps', reason: 'Wrong.' },
          ],
        }),
    ]),
  ),
});

/** Six families on three objectives, as each lesson has at least. */
const familiesOf = (lesson: LessonSlug): ItemFamily[] =>
  [0, 1, 2, 3, 4, 5].map((n) =>
    family(`${lesson}-${String(n)}`, lesson, `objective-${String(n % 3)}`),
  );

const world = loadItemWorld();
const slugs = course.map(({ slug }) => slug);
const seeds = Array.from({ length: 60 }, (_, n) => `seed ${String(n)}`);
const setOf = (lessons: readonly LessonSlug[], seed: string) =>
  generateQuestionSet({ seed, lessons, familiesOf, world });
const counts = (things: readonly string[]) =>
  [...new Set(things)].map((one) => things.filter((thing) => thing === one).length);

describe('a set of questions', () => {
  it('is the same for the same seed and another for the next', () => {
    expect(setOf(slugs.slice(0, 2), 'a')).toEqual(setOf(slugs.slice(0, 2), 'a'));
    expect(setOf(slugs.slice(0, 2), 'a')).not.toEqual(setOf(slugs.slice(0, 2), 'b'));
  });

  it.each([1, 2, 3, 4, 5, 8])('has eight questions on %i lessons, as even as can be', (many) => {
    for (const seed of seeds) {
      const { variant } = setOf(slugs.slice(0, many), seed);
      const perLesson = counts(variant.questions.map(({ lesson }) => lesson));
      expect(variant.questions).toHaveLength(8);
      expect(perLesson).toHaveLength(many);
      expect(Math.max(...perLesson) - Math.min(...perLesson)).toBeLessThanOrEqual(1);
    }
  });

  it('asks about every lesson where there are more of them than eight', () => {
    for (const seed of seeds) {
      const { variant } = setOf(slugs, seed);
      expect(counts(variant.questions.map(({ lesson }) => lesson))).toEqual(slugs.map(() => 1));
    }
  });

  it('takes no family twice while another is left, and then another template of it', () => {
    for (const seed of seeds) {
      const { items } = setOf(slugs.slice(0, 1), seed).answerKey;
      expect(new Set(items.slice(0, 6).map(({ item }) => item.family)).size).toBe(6);
      const kinds = items.map(({ item }) => `${item.family}/${item.template}`);
      expect(new Set(kinds).size).toBe(8);
    }
  });

  it('goes through the objectives of a lesson before one comes again', () => {
    for (const seed of seeds) {
      const { items } = setOf(slugs.slice(0, 1), seed).answerKey;
      const objectives = items.slice(0, 6).map(({ item }) => Number(item.family.at(-1)) % 3);
      expect(new Set(objectives.slice(0, 3)).size).toBe(3);
      expect(new Set(objectives.slice(3)).size).toBe(3);
    }
  });

  it('draws each family about as often as any other', () => {
    const many = Array.from({ length: 300 }, (_, n) =>
      setOf(slugs.slice(0, 3), `even ${String(n)}`),
    );
    const families = counts(
      many.flatMap(({ answerKey }) => answerKey.items.map(({ item }) => item.family)),
    );
    // 2400 questions over 18 families: 133 each; five standard deviations of a binomial are 56.
    expect(families).toHaveLength(18);
    expect(Math.min(...families)).toBeGreaterThan(133 - 56);
    expect(Math.max(...families)).toBeLessThan(133 + 56);
  });

  it('gives the student faces alone, in the order of the key', () => {
    const { variant, answerKey } = setOf(slugs.slice(0, 3), 'a');
    expect(variant.questions.map(({ face }) => face.prompt)).toEqual(
      answerKey.items.map(({ item }) => item.prompt),
    );
    expect(JSON.stringify(variant)).not.toMatch(/"(key|reason|explanation)"/);
  });

  it('cannot be made of lessons without a question', () => {
    const none = { seed: 'a', lessons: slugs, familiesOf: () => [], world };
    expect(() => generateQuestionSet(none)).toThrow(RangeError);
  });
});
