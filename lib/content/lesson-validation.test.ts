import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { routes } from '../routes';
import { itemBank } from '../items/item-bank';
import { course } from '../course/lessons';
import { labs } from '../variants/labs';
import { checkLesson } from './check-lesson';
import { checkLessonOrder } from './check-lesson-order';
import { compileLesson, listLessons, type Lesson } from './lessons';
import { reckoningFrom } from './reckoning';
import { lessonQuantities } from './lesson-quantities';

const lessons = await listLessons();
const knownPaths = new Set([
  routes.labs.all(),
  ...labs.map((lab) => routes.labs.one(lab)),
  routes.lessons.all(),
  ...lessons.map(({ slug }) => routes.lessons.one(slug)),
]);
const reportOn = (lesson: Omit<Lesson, 'Content' | 'skies'>) =>
  checkLesson({
    ...lesson,
    knownPaths,
    objectivesOfFamilies: itemBank
      .filter((family) => family.lesson === lesson.slug)
      .map(({ objective }) => objective),
  });
/** The small lesson has no families of its own in the bank: they are said to be there. */
const problemsOf = (lesson: Omit<Lesson, 'Content' | 'skies'>, objectives = ['turn']) =>
  checkLesson({ ...lesson, knownPaths, objectivesOfFamilies: objectives }).problems;

describe('every lesson of the product', () => {
  it('stands in the course, and the course has no other', () => {
    expect(lessons.map(({ slug }) => slug)).toEqual(course.map(({ slug }) => slug));
  });

  it('has the skill of the course among its objectives', () => {
    for (const { slug, skill } of course) {
      const objectives = lessons.find((one) => one.slug === slug)?.frontMatter.objectives ?? [];
      expect(
        objectives.map((one) => one.skill),
        slug,
      ).toContain(skill);
    }
  });

  it.each(lessons.map((lesson) => [lesson.slug, lesson] as const))(
    '%s keeps the rules of the format',
    (_, lesson) => {
      expect(reportOn(lesson).problems).toEqual([]);
    },
  );

  it.each(lessons.map((lesson) => [lesson.slug, lesson] as const))(
    '%s can be read at the age of twelve: school grade 7 at most by Kincaid’s formula',
    (_, lesson) => {
      const { readingLevel } = reportOn(lesson);
      expect(readingLevel.words).toBeGreaterThan(500);
      expect(readingLevel.grade).toBeLessThanOrEqual(7);
    },
  );

  it('stands in an order without gaps or circles', () => {
    expect(
      checkLessonOrder(new Map(lessons.map(({ slug, frontMatter }) => [slug, frontMatter]))),
    ).toEqual([]);
  });
});

describe('the order of lessons', () => {
  type Links =
    Parameters<typeof checkLessonOrder>[0] extends ReadonlyMap<string, infer L> ? L : never;
  const links: Links = { prerequisites: [], previous: null, next: null };

  it('is refused when the next lesson does not know the one before', () => {
    const one: Links = { ...links, next: 'two' };
    expect(
      checkLessonOrder(
        new Map([
          ['one', one],
          ['two', links],
        ]),
      ),
    ).toEqual(['"one" is followed by "two", which does not know it.']);
    expect(
      checkLessonOrder(
        new Map([
          ['one', one],
          ['two', { ...links, previous: 'one' }],
        ]),
      ),
    ).toEqual([]);
  });

  it('is refused when a lesson needs itself through others', () => {
    const lessons = new Map<string, Links>([
      ['one', { ...links, prerequisites: ['two'] }],
      ['two', { ...links, prerequisites: ['one'] }],
    ]);
    expect(checkLessonOrder(lessons)).toContain('"one" is its own prerequisite.');
  });

  it('may lead to lessons that are not written yet', () => {
    expect(checkLessonOrder(new Map([['one', { ...links, next: 'unwritten' }]]))).toEqual([]);
  });
});

/** A lesson with nothing wrong, and small: each rule is broken in it on purpose below. */
const good = {
  frontMatter: await readFile(path.join(import.meta.dirname, 'small-lesson.fixture.mdx'), 'utf8'),
};
const noSkies = new Map();

async function lessonOf(source: string): Promise<Omit<Lesson, 'Content' | 'skies'>> {
  const { frontMatter, outline } = await compileLesson(source);
  const reckoning = reckoningFrom(lessonQuantities, noSkies, []);
  return { slug: 'small', frontMatter, outline, reckoning };
}

const broken = (from: string, to: string) => {
  const source = good.frontMatter.replace(from, to);
  // A change that changes nothing would make the test worthless.
  if (source === good.frontMatter) throw new Error(`"${from}" is not in the small lesson`);
  return source;
};

describe('a small lesson', () => {
  it('keeps the rules', async () => {
    expect(problemsOf(await lessonOf(good.frontMatter))).toEqual([]);
  });

  it.each([
    ['a part is missing', '<Summary>\n\nIt turns.\n\n</Summary>\n', '', '<Summary> is missing.'],
    [
      'a part stands in the wrong place',
      '<Retrieval />\n\n<AtAGlance />',
      '<AtAGlance />\n\n<Retrieval />',
      '<Retrieval> must stand before <AtAGlance>.',
    ],
    [
      'a word of the vocabulary is not used',
      '<Term>sky</Term>',
      'sky',
      'The vocabulary has "sky", but no <Term> uses it.',
    ],
    [
      'a term is not in the vocabulary',
      '<Term>sky</Term>',
      '<Term>sky</Term> <Term>sea</Term>',
      '<Term> uses "sea", which is not in the vocabulary.',
    ],
    [
      'an objective has no question in the check',
      'objective: turn\n    item:\n      id: checked',
      'objective: other\n    item:\n      id: checked',
      'No question of the check asks for the objective "turn".',
    ],
    [
      'a question of the faded practice is not shown',
      '<Check id="faded" />',
      '',
      'The question "faded" of the faded practice is never shown.',
    ],
    [
      'a caution comes after the step that meets the danger',
      '<Hazard id="dark" />\n',
      '',
      'A step meets the hazard "dark" before its caution has been given.',
    ],
    [
      'no step says that it meets the danger',
      '<Step meets="dark">',
      '<Step>',
      'No step says that it meets "dark".',
    ],
    [
      'it has a figure too few',
      '<Figure name="altitude-limits" alternative="A star.">\n  The air dims it.\n</Figure>\n',
      '',
      'It has 1 figures; 2 are the least.',
    ],
    ['the minutes are too many', 'learn: 1\n', 'learn: 9\n', '10 minutes are stated'],
    [
      'a paragraph ends in the middle of its sentence',
      'It turns.',
      'It turns about the\n\n**Pole**, as seen from here.',
      '“It turns about the.” is torn from the rest of its sentence.',
    ],
    [
      'a paragraph begins with a component in the middle of its sentence',
      'It turns.',
      'It turns.\n\n<Computed value="air-mass 20" /> times a night.\n\nround and round.',
      '“round and round.” is torn from the rest of its sentence.',
    ],
    [
      'a number stands apart from its degree sign',
      'It turns.',
      'It turns by <Computed value="air-mass 20" />\n°.',
      'is torn from the rest of its sentence.',
    ],
    [
      'a paragraph is torn in two',
      'It turns.',
      "It turns{' '}\n\nround.",
      'is torn from the rest of its sentence.',
    ],
    ['a link leads nowhere', '(/lessons)', '(/lesson)', 'The link /lesson leads nowhere.'],
    ['an anchor leads nowhere', '(/lessons)', '(#nowhere)', 'The link #nowhere leads nowhere.'],
    [
      'a number is asked of the engine that it does not know',
      'air-mass 20',
      'air-mess 20',
      '"air-mess" is no quantity of the lessons',
    ],
    [
      'a reason is not true by the engine',
      'air-mass 10 > 2',
      'air-mass 10 > 9',
      '"air-mass 10 > 9" is not true',
    ],
    [
      'the key is not the best by its measure',
      'measure: air-mass 10',
      'measure: air-mass 60',
      'its key does not have the highest measure',
    ],
  ])('is refused when %s', async (_, from, to, problem) => {
    const problems = problemsOf(await lessonOf(broken(from, to)));
    expect(
      problems.some((one) => one.includes(problem)),
      problems.join('\n'),
    ).toBe(true);
  });

  it('is refused when no family of questions is about an objective, or one is about none', async () => {
    const small = await lessonOf(good.frontMatter);
    expect(problemsOf(small, [])).toEqual([
      'No family of questions is about the objective "turn".',
    ]);
    expect(problemsOf(small, ['turn', 'other'])).toEqual([
      'A family of questions is about "other", which is no objective.',
    ]);
  });

  it.each([
    ['raw HTML', 'It turns.', '<div>It turns.</div>', '<div> is not in the vocabulary'],
    ['a component of no vocabulary', 'It turns.', '<Video />', '<Video> is not in the vocabulary'],
    ['an expression', 'It turns.', '{process.env.HOME}', 'holds no code'],
    ['an import', 'It turns.', 'import fs from "node:fs"', 'holds no code'],
    ['an export', 'It turns.', 'export const a = 1', 'holds no code'],
    ['an attribute with code in it', '<Check id="faded" />', '<Check id={faded} />', 'name="text"'],
    ['a spread attribute', '<Check id="faded" />', '<Check {...all} />', 'name="text"'],
    ['a picture from elsewhere', 'It turns.', '![x](https://x.example/x.png)', 'use <Figure>'],
    ['an unknown figure', 'name="fists-up"', 'name="fists-down"', 'no figure named "fists-down"'],
    ['a figure without words', 'alternative="A fist."', 'alternative=" "', 'needs an alternative'],
  ])('is refused for %s', async (_, from, to, message) => {
    await expect(compileLesson(broken(from, to))).rejects.toThrow(message);
  });
});
