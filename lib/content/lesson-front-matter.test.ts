import { readFile } from 'node:fs/promises';
import path from 'node:path';
import matter from 'gray-matter';
import { describe, expect, it } from 'vitest';
import { lessonFrontMatterSchema } from './lesson-front-matter';

const file = path.join(import.meta.dirname, 'small-lesson.fixture.mdx');
const good = matter(await readFile(file, 'utf8')).data;

/** The small lesson's front matter with one thing put in place of another. */
function changed(change: Record<string, unknown>): Record<string, unknown> {
  return { ...good, ...change };
}
const objective = { id: 'turn', skill: 'choose-stars', text: 'Say that the sky turns.' };
const choice = {
  id: 'q',
  kind: 'choice',
  prompt: 'Which?',
  key: 'a',
  options: [
    { id: 'a', text: 'A', reason: 'Right.' },
    { id: 'b', text: 'B', reason: 'Wrong.' },
    { id: 'c', text: 'C', reason: 'Wrong.' },
  ],
};
const numeric = {
  id: 'q',
  kind: 'numeric',
  prompt: 'How many?',
  unit: 'degrees',
  key: 15,
  fullWithin: 1,
  zeroBeyond: 5,
  reason: 'So.',
};
const asked = (item: unknown) => changed({ checks: [{ stage: 'check', objective: 'turn', item }] });

describe('the front matter of a lesson', () => {
  it('is taken when everything is there', () => {
    expect(lessonFrontMatterSchema.safeParse(good).error).toBeUndefined();
    expect(lessonFrontMatterSchema.safeParse(asked(choice)).error).toBeUndefined();
    expect(lessonFrontMatterSchema.safeParse(asked(numeric)).error).toBeUndefined();
  });

  it('reads a date whether YAML made it one or not', () => {
    expect(lessonFrontMatterSchema.parse(good).reviewed).toBe('2026-11-25');
    expect(lessonFrontMatterSchema.parse(changed({ reviewed: '2026-11-25' })).reviewed).toBe(
      '2026-11-25',
    );
  });

  const every = [
    'id',
    'version',
    'title',
    'summary',
    'objectives',
    'standards',
    'level',
    'minutes',
    'prerequisites',
    'previous',
    'next',
    'equipment',
    'hazards',
    'vocabulary',
    'retrieval',
    'checks',
    'practical',
    'sources',
    'reviewed',
  ];

  it.each(every)('is refused without %s', (name) => {
    const rest = Object.fromEntries(Object.entries(good).filter(([key]) => key !== name));
    const refused = lessonFrontMatterSchema.safeParse(rest);
    expect(refused.error?.issues[0]?.path).toEqual([name]);
  });

  it('holds nothing else', () => {
    expect(Object.keys(good).sort()).toEqual([...every].sort());
    expect(lessonFrontMatterSchema.safeParse(changed({ colour: 'red' })).success).toBe(false);
  });

  it.each([
    ['a skill that is none of ours', { objectives: [{ ...objective, skill: 'juggling' }] }],
    ['no objective at all', { objectives: [] }],
    ['an id with spaces', { id: 'Lesson 9' }],
    ['version 0', { version: 0 }],
    ['an empty title', { title: ' ' }],
    [
      'an alignment that is neither full nor partial',
      {
        standards: [{ code: 'X', name: 'X', alignment: 'good' }],
      },
    ],
    ['no time to learn', { minutes: { learn: 0, practise: 1 } }],
    [
      'a hazard of unknown severity',
      {
        hazards: [{ id: 'sun', severity: 'mild', text: 'Sun', gate: true }],
      },
    ],
    [
      'a hazard that does not say whether it is a gate',
      {
        hazards: [{ id: 'sun', severity: 'danger', text: 'Sun' }],
      },
    ],
    ['a word without a definition', { vocabulary: [{ term: 'sky', definition: '' }] }],
    ['no evidence for the practical', { practical: { task: 'Look.', evidence: [] } }],
    ['no source', { sources: [] }],
    [
      'a source at an address that is not https',
      { sources: [{ text: 'X', url: 'http://x.example' }] },
    ],
    [
      'a source at an address that runs code',
      { sources: [{ text: 'X', url: 'javascript:alert(1)' }] },
    ],
    ['a review date that is none', { reviewed: 'last week' }],
  ])('is refused with %s', (_, change) => {
    expect(lessonFrontMatterSchema.safeParse(changed(change)).success).toBe(false);
  });

  it.each([
    ['a key that is no option', { ...choice, key: 'z' }],
    [
      'two options of the same id',
      {
        ...choice,
        options: choice.options.map((option) => ({ ...option, id: 'a' })),
      },
    ],
    ['two options only', { ...choice, options: choice.options.slice(0, 2) }],
    [
      'an option without a reason',
      {
        ...choice,
        options: choice.options.map(({ id, text }) => ({ id, text })),
      },
    ],
    [
      'a measure for some options only',
      {
        ...choice,
        options: choice.options.map((option, i) =>
          i === 0 ? { ...option, measure: 'air-mass 20' } : option,
        ),
      },
    ],
    [
      'a condition that compares nothing',
      {
        ...choice,
        options: choice.options.map((option) => ({ ...option, shownBy: ['air-mass 20'] })),
      },
    ],
    ['a band that is zero before it is full', { ...numeric, fullWithin: 5, zeroBeyond: 5 }],
    ['an unknown kind', { ...choice, kind: 'essay' }],
  ])('is refused with a question that has %s', (_, item) => {
    expect(lessonFrontMatterSchema.safeParse(asked(item)).success).toBe(false);
  });
});
