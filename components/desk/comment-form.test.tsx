import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test } from 'vitest';
import { CommentForm } from './comment-form';

afterEach(cleanup);

test('“Saved.” goes when another comment is typed or chosen, and comes back when that is saved', async () => {
  const user = userEvent.setup();
  const places = [
    { id: '', name: 'On the whole', text: '', changedAt: '' },
    { id: 'level', name: 'Level', text: '', changedAt: '' },
  ];
  const action = () => Promise.resolve({ problem: null, said: 'Saved.', kept: {} });
  render(<CommentForm places={places} action={action} />);
  const save = async () => {
    await user.click(screen.getByRole('button', { name: 'Save the comment' }));
    await screen.findByText('Saved.');
  };
  await user.type(screen.getByLabelText('Comment'), 'Well levelled.');
  await save();
  await user.selectOptions(screen.getByLabelText('On'), 'level');
  expect(screen.queryByText('Saved.')).toBeNull();
  await save();
  await user.type(screen.getByLabelText('Comment'), 'M');
  expect(screen.queryByText('Saved.')).toBeNull();
  await save();
});
