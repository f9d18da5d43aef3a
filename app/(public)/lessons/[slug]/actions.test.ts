import { describe, expect, it } from 'vitest';
import { answerCheck } from './actions';

const nothingYet = { tries: 0, answer: '', feedback: null, refusal: null };
const form = (fields: Readonly<Record<string, string | undefined>>) => {
  const data = new FormData();
  for (const [name, value] of Object.entries(fields))
    if (value !== undefined) data.set(name, value);
  return data;
};
const lesson = 'choosing-alignment-stars';

describe('an answer sent to a lesson', () => {
  it('is marked, with the reason for exactly this answer', async () => {
    const state = await answerCheck(
      nothingYet,
      form({ lesson, item: 'recall-clock', answer: 'one' }),
    );
    expect(state).toMatchObject({ tries: 1, answer: 'one', refusal: null });
    expect(state.feedback).toMatchObject({ verdict: 'wrong', answer: null });
    expect(state.feedback?.said).toContain('a wrong date');
  });

  it('gets the solution only when it asks for it', async () => {
    const asked = { lesson, item: 'recall-clock', answer: 'one', reveal: 'yes' };
    const state = await answerCheck(nothingYet, form(asked));
    expect(state.feedback?.answer).toContain('About 15°');
  });

  it.each([
    ['an unknown lesson', { lesson: 'no-such-lesson', item: 'recall-clock', answer: 'one' }],
    ['a way out of the folder', { lesson: '../../etc', item: 'recall-clock', answer: 'one' }],
    ['an unknown question', { lesson, item: 'no-such-item', answer: 'one' }],
    ['nothing at all', {}],
    ['an answer of great length', { lesson, item: 'fists', answer: '3'.repeat(101) }],
  ])('is refused for %s', async (_, fields) => {
    const state = await answerCheck(nothingYet, form(fields));
    expect(state.feedback).toBeNull();
    expect(state.refusal).toContain('This question has changed');
  });

  it.each([
    ['', 'Give an answer first.'],
    [
      'twelve',
      'That is not a number in the unit shown. Write figures only, such as 35 or 2.5, and no comma for thousands.',
    ],
  ])('is told what is wrong with %j', async (answer, refusal) => {
    const state = await answerCheck(nothingYet, form({ lesson, item: 'fists', answer }));
    expect(state.refusal).toBe(refusal);
  });

  it('takes no option from another question', async () => {
    const state = await answerCheck(nothingYet, form({ lesson, item: 'twins', answer: 'fifteen' }));
    expect(state.refusal).toContain('not one of those on the page');
  });
});
