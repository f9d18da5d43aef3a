import { useState } from 'react';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import type { ItemAnswer } from '@/lib/items/item-answer';
import { QuestionOfSet } from './question-of-set';

afterEach(cleanup);

const said = /^A number is needed here/;

function NumericQuestion({
  start,
  onGo,
}: {
  start: string;
  onGo: (to: number | 'review') => void;
}) {
  const [answer, setAnswer] = useState<ItemAnswer>({ kind: 'numeric', text: start });
  return (
    <QuestionOfSet
      question={{
        lesson: 'standing-it-up',
        face: { kind: 'numeric', prompt: 'How far off level is it?', unit: 'degrees' },
      }}
      number={1}
      count={2}
      answer={answer}
      onAnswer={setAnswer}
      onGo={onGo}
    />
  );
}

function open(start = '') {
  const onGo = vi.fn<(to: number | 'review') => void>();
  render(<NumericQuestion {...{ start, onGo }} />);
  return { onGo, user: userEvent.setup() };
}

const field = () => screen.getByLabelText<HTMLInputElement>('Your answer');
const next = () => screen.getByRole('button', { name: 'Next question' });

test('going on from what is no number says so beside the field, once, and keeps what was typed', async () => {
  const { onGo, user } = open();
  await user.type(field(), 'abc');
  expect(screen.queryByText(said), 'nothing while typing').toBeNull();
  await user.click(next());
  expect(onGo).not.toHaveBeenCalled();
  expect(screen.getByRole('alert').textContent).toMatch(said);
  expect(field().value).toBe('abc');
  expect(field().getAttribute('aria-invalid')).toBe('true');
  expect(document.activeElement).toBe(field());
  await user.click(next());
  expect(onGo).toHaveBeenCalledExactlyOnceWith(1);
});

test('what was said goes when a number stands there', async () => {
  const { onGo, user } = open();
  await user.type(field(), 'abc{Enter}');
  expect(screen.getByText(said)).toBeTruthy();
  await user.clear(field());
  expect(screen.queryByText(said)).toBeNull();
  await user.type(field(), '2.5');
  expect(screen.queryByText(said)).toBeNull();
  await user.click(next());
  expect(onGo).toHaveBeenCalledExactlyOnceWith(1);
});

test('a question come back to with no number in it says so', () => {
  open('abc');
  expect(screen.getByText(said)).toBeTruthy();
});

test('an empty field may be passed by', async () => {
  const { onGo, user } = open();
  await user.click(next());
  expect(onGo).toHaveBeenCalledExactlyOnceWith(1);
  expect(screen.queryByText(said)).toBeNull();
});
