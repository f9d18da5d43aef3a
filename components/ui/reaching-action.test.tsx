import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { ChangePasswordForm } from '@/app/(teacher)/desk/account/change-password-form';
import type { FormActionFunction } from '../desk/action-form';

afterEach(cleanup);

test('a form of passwords that does not reach the server keeps what was typed, and can be sent again', async () => {
  const user = userEvent.setup();
  const action = vi.fn<FormActionFunction>(() => Promise.reject(new TypeError('Failed to fetch')));
  render(<ChangePasswordForm action={action} />);
  await user.type(screen.getByLabelText('Password until now'), 'stars over the bank');
  await user.type(screen.getByLabelText('New password'), 'stars under the bank');
  await user.click(screen.getByRole('button', { name: 'Change the password' }));
  expect((await screen.findByRole('alert')).textContent).toContain('No connection to the server');
  await screen.findByRole('button', { name: 'Change the password' });
  action.mockResolvedValue({ problem: null, said: 'Changed.', kept: {} });
  await user.click(screen.getByRole('button', { name: 'Change the password' }));
  await screen.findByText('Changed.');
  expect(screen.queryByRole('alert')).toBeNull();
  const [, sent] = action.mock.lastCall ?? [];
  expect(Object.fromEntries(sent ?? [])).toEqual({
    oldPassword: 'stars over the bank',
    newPassword: 'stars under the bank',
  });
  // What the server has taken stands in no field any more.
  for (const name of ['Password until now', 'New password']) {
    expect(screen.getByLabelText(name)).toHaveProperty('value', '');
  }
});
