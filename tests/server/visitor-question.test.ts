import { describe, expect, it } from 'vitest';
import { familiesOf } from '@/lib/items/item-bank';
import { markVisitorQuestion, visitorQuestion } from '@/lib/data/visitor-question';

const lesson = 'choosing-alignment-stars';
const address = { lesson, round: 'a clear night', number: 1, family: null, template: null };

const asked = (number: number) => {
  const question = visitorQuestion({ ...address, number });
  if (!question.ok) throw new Error(question.problem.message);
  return question.value;
};

describe("a visitor's questions on a lesson", () => {
  it('are the same for the same address', () => {
    expect(visitorQuestion(address)).toEqual(visitorQuestion(address));
  });

  it('go through every family before one comes again', () => {
    const ids = familiesOf(lesson).map(({ id }) => id);
    const first = ids.map((_, index) => asked(index + 1).family);
    expect(first.toSorted()).toEqual(ids.toSorted());
  });

  it('bring another template when a family comes again', () => {
    const count = familiesOf(lesson).length;
    expect(asked(count + 1).family).toBe(asked(1).family);
    expect(asked(count + 1).template).not.toBe(asked(1).template);
  });

  it('tell nothing of the answer', () => {
    const count = familiesOf(lesson).length;
    for (let number = 1; number <= 4 * count; number++) {
      const told = JSON.stringify(asked(number).face);
      expect(told).not.toMatch(
        /"(key|right|reason|rules|pairs|slips|explanation|afterwards)":(?!\[\{"id")/,
      );
    }
  });

  it('are of one kind alone in the author’s look', () => {
    const look = { ...address, family: 'fists-and-compass', template: 'fists-up' };
    for (const number of [1, 2, 3]) {
      expect(visitorQuestion({ ...look, number })).toMatchObject({
        value: { family: 'fists-and-compass', template: 'fists-up' },
      });
    }
  });

  it('are marked by what the address alone says', () => {
    const look = { ...address, family: 'fists-and-compass', template: 'fists-up' };
    const marked = markVisitorQuestion(look, { kind: 'numeric', text: '400' });
    expect(marked).toMatchObject({ ok: true, value: { feedback: { verdict: 'wrong' } } });
  });

  it.each([
    ['no answer', { kind: 'numeric', text: '' }, 'no-answer'],
    ['no number', { kind: 'numeric', text: 'many' }, 'not-a-number'],
    ['an answer to another question', { kind: 'choice', option: 'a' }, 'other-question'],
    ['what is no answer at all', 'a', 'bad-input'],
  ])('refuse %s in words', (_, answer, code) => {
    const look = { ...address, family: 'fists-and-compass', template: 'fists-up' };
    expect(markVisitorQuestion(look, answer)).toMatchObject({ ok: false, problem: { code } });
  });

  it.each([
    ['an unknown lesson', { ...address, lesson: 'no-such-lesson' }],
    ['a round without a seed', { ...address, round: '' }],
    ['a number that cannot be', { ...address, number: 0 }],
    ['an unknown family', { ...address, family: 'no-such-family' }],
  ])('do not exist for %s', (_, input) => {
    expect(visitorQuestion(input).ok).toBe(false);
  });
});
