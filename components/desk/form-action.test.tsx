import { startTransition } from 'react';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { ActionForm, type FormActionFunction, type FormAnswer } from './action-form';
import { ConfirmAction } from './confirm-action';

afterEach(cleanup);

const done = (said: string): FormAnswer => ({ problem: null, said, kept: {} });
const unreached = 'Not saved: no connection to the server. Try again.';
const offline = () => Promise.reject(new TypeError('Failed to fetch'));

function MarkForm({ action }: { action: FormActionFunction }) {
  return (
    <ActionForm
      idPrefix="test"
      action={action}
      fields={[
        { name: 'mark', label: 'Mark', type: 'number' },
        {
          name: 'excused',
          label: 'Counts',
          type: 'select',
          defaultValue: 'no',
          options: [
            { value: 'yes', label: 'Excused' },
            { value: 'no', label: 'Counts' },
          ],
        },
        { name: 'note', label: 'Why', type: 'note' },
      ]}
      submitLabel="Save"
    />
  );
}

test('a form that does not reach the server keeps all that was typed, says so and can be sent again', async () => {
  const user = userEvent.setup();
  const action = vi.fn<FormActionFunction>(offline);
  render(<MarkForm action={action} />);
  await user.type(screen.getByLabelText('Mark'), '71');
  await user.selectOptions(screen.getByLabelText('Counts'), 'yes');
  await user.type(screen.getByLabelText('Why'), 'Seen at the bench.');
  await user.click(screen.getByRole('button', { name: 'Save' }));
  expect((await screen.findByRole('alert')).textContent).toContain(unreached);
  action.mockResolvedValue(done('Saved.'));
  await user.click(screen.getByRole('button', { name: 'Save' }));
  await screen.findByText('Saved.');
  expect(screen.queryByRole('alert')).toBeNull();
  const [, sent] = action.mock.lastCall ?? [];
  expect(Object.fromEntries(sent ?? [])).toEqual({
    mark: '71',
    excused: 'yes',
    note: 'Seen at the bench.',
  });
});

test('a form speaks as soon as the server has answered, before the page shows what became of it', async () => {
  const user = userEvent.setup();
  let arrive = (): void => undefined;
  const page = new Promise<void>((resolve) => {
    arrive = resolve;
  });
  const action: FormActionFunction = () => {
    // The page that is still on its way, as a router fetches it.
    startTransition(async () => {
      await page;
    });
    return Promise.resolve(done('Saved.'));
  };
  render(<MarkForm action={action} />);
  await user.click(screen.getByRole('button', { name: 'Save' }));
  await screen.findByText('Saved.');
  expect(screen.getByRole('button', { name: 'Save' }).getAttribute('aria-disabled')).toBe('true');
  arrive();
});

test('a question that does not reach the server stays open and says so', async () => {
  const user = userEvent.setup();
  const action = vi.fn<FormActionFunction>(offline);
  render(
    <ConfirmAction action={action} title="Publish it?" description="All see it." confirmLabel="Yes">
      Publish…
    </ConfirmAction>,
  );
  await user.click(screen.getByRole('button', { name: 'Publish…' }));
  await user.click(screen.getByRole('button', { name: 'Yes' }));
  expect((await screen.findByRole('alert')).textContent).toContain(unreached);
  action.mockResolvedValue(done('Published.'));
  await user.click(screen.getByRole('button', { name: 'Yes' }));
  expect((await screen.findByText('Published.')).getAttribute('role')).toBe('status');
  expect(screen.queryByRole('dialog')).toBeNull();
});

test('an open question does what it says, whatever the page has become beneath it', async () => {
  const user = userEvent.setup();
  const undoMark = vi.fn<FormActionFunction>(() => Promise.resolve(done('Undone.')));
  const undoExcuse = vi.fn<FormActionFunction>(() => Promise.resolve(done('Undone.')));
  const page = (newer: boolean) => (
    <ConfirmAction
      action={newer ? undoExcuse : undoMark}
      title="Undo the last decision?"
      description={newer ? 'Excuse' : 'Mark set by hand'}
      confirmLabel="Undo it"
    >
      Undo…
    </ConfirmAction>
  );
  const { rerender } = render(page(false));
  await user.click(screen.getByRole('button', { name: 'Undo…' }));
  rerender(page(true));
  expect(screen.getByRole('dialog').textContent).toContain('Mark set by hand');
  await user.click(screen.getByRole('button', { name: 'Undo it' }));
  expect(undoMark).toHaveBeenCalledOnce();
  expect(undoExcuse).not.toHaveBeenCalled();
  await user.click(screen.getByRole('button', { name: 'Undo…' }));
  expect(screen.getByRole('dialog').textContent).toContain('Excuse');
});
