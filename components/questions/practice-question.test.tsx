import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { ItemFace } from '@/lib/items/item-face';
import { PracticeQuestion } from './practice-question';
import type { PracticeState } from './practice-state';
import type { SkillStanding } from './skill-standing';

vi.mock('next/navigation', () => ({ useRouter: () => ({}) }));
beforeEach(() => {
  Element.prototype.scrollIntoView = () => undefined;
});
afterEach(cleanup);

const face: ItemFace = {
  kind: 'choice',
  prompt: 'Which leg?',
  options: [
    { id: 'a', text: 'The north leg' },
    { id: 'b', text: 'The south leg' },
  ],
};
const mastered: SkillStanding = {
  skill: 'level',
  state: 'mastered',
  inARow: 3,
  review: 'in 2 days',
};

/** Answers a question about safety whose outcome is of the skill in the standing. */
async function answerTo(standing: SkillStanding, brought: 'mastery' | 'review' | null) {
  const state: PracticeState = {
    tries: 1,
    questionKey: 'q',
    answer: { kind: 'choice', option: 'a' },
    refusal: null,
    outcome: {
      face,
      standing,
      brought,
      feedback: {
        mark: 1,
        verdict: 'right',
        said: [],
        misconceptions: [],
        right: 'The north leg',
        explanation: 'So.',
        afterwards: null,
      },
    },
  };
  render(
    <PracticeQuestion
      question={{ key: 'q', face }}
      standing={{ skill: 'safety', state: 'practising', inARow: 0, review: null }}
      answerAction={() => Promise.resolve(state)}
      nextAddress="/next"
      whenMastered={{ level: <p>Notice of levels</p>, safety: <p>Notice of safety</p> }}
    />,
  );
  const user = userEvent.setup();
  await user.click(screen.getByLabelText('The north leg'));
  await user.click(screen.getByRole('button', { name: 'Check my answer' }));
  await screen.findByRole('link', { name: 'Next question' });
}

test('the answer that masters a skill shows the notice of that skill, whatever is asked next', async () => {
  await answerTo(mastered, 'mastery');
  expect(screen.getByText('Notice of levels')).toBeTruthy();
  expect(screen.queryByText('Notice of safety')).toBeNull();
});

test('a later answer in a skill that is mastered shows no notice again', async () => {
  await answerTo({ ...mastered, inARow: 0 }, null);
  expect(screen.queryByText(/Notice of/)).toBeNull();
  expect(screen.queryByText(/Review passed|last review/)).toBeNull();
});

test('a passed review says when the next one is', async () => {
  await answerTo({ ...mastered, review: 'in 5 days' }, 'review');
  expect(screen.getByText('Review passed. The next one is in 5 days.')).toBeTruthy();
  expect(screen.queryByText(/Notice of/)).toBeNull();
});

test('the last review passed says that the skill has stayed', async () => {
  await answerTo({ ...mastered, state: 'kept', review: null }, 'review');
  expect(screen.getByText(/That was the last review/)).toBeTruthy();
});
