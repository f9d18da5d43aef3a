import { describe, expect, it } from 'vitest';
import { choice } from '../items/build-item';
import { gradeItem } from '../items/grade-item';
import { feedbackOf } from './question-feedback';

const item = {
  family: 'a-family',
  template: 'one',
  generatorVersion: 1001,
  ...choice({
    prompt: 'Which way does the bubble go?',
    explanation: 'The liquid runs down.',
    right: { text: 'To the high side', reason: 'Up it goes.' },
    wrong: [
      { text: 'To the low side', reason: 'That is where the liquid goes.' },
      { text: 'Nowhere', reason: 'It moves.' },
    ],
  }),
};
const right = { kind: 'choice', option: item.key } as const;
const wrong = { kind: 'choice', option: 'b' } as const;

describe('what is told of an answer that was kept', () => {
  it('is what the marking says, where it gives the mark that was kept', () => {
    const grading = gradeItem(item, wrong);
    if (!grading.ok) throw new Error('a choice can be marked');
    expect(feedbackOf({ item, answer: wrong, mark: 0 })).toEqual(grading.feedback);
  });

  it('goes by the mark that was kept, where today’s marking would give another', () => {
    const told = feedbackOf({ item, answer: right, mark: 40 });
    expect({ mark: told.mark, verdict: told.verdict }).toEqual({ mark: 0.4, verdict: 'near' });
    expect(told.said.slice(0, 2)).toEqual([
      'An earlier marking gave 40 of 100, and that mark stands.',
      'Today’s marking gives 100 of 100 and says:',
    ]);
  });

  it('still tells the mark of an answer that today’s marking refuses', () => {
    const told = feedbackOf({ item, answer: { kind: 'numeric', text: '3' }, mark: 100 });
    expect({ mark: told.mark, verdict: told.verdict }).toEqual({ mark: 1, verdict: 'right' });
    expect(told.right).toContain('To the high side');
  });

  it('is nothing for a question without an answer', () => {
    expect(() => feedbackOf({ item, answer: null, mark: null })).toThrow();
  });
});
