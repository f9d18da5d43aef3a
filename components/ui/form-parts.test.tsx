import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { Button } from './button';
import { Checkbox, choiceLook } from './checkbox';
import { ErrorSummary } from './error-summary';
import { Field } from './field';
import { Meter } from './meter';
import { RadioGroup } from './radio-group';
import { TextInput } from './text-input';

afterEach(cleanup);

test('a field gives its control the label, the hint and the error', () => {
  render(
    <Field label="Latitude" hint="North is positive" error="Type a number from −90 to 90.">
      {(control) => <TextInput {...control} name="latitude" />}
    </Field>,
  );
  const input = screen.getByRole('textbox', { name: 'Latitude' });
  expect(input.getAttribute('aria-invalid')).toBe('true');
  const described = (input.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent);
  expect(described).toEqual(['North is positive', 'Type a number from −90 to 90.']);
});

test('a field without hint and error points nowhere', () => {
  render(<Field label="Name">{(control) => <TextInput {...control} />}</Field>);
  const input = screen.getByRole('textbox', { name: 'Name' });
  expect(input.hasAttribute('aria-describedby')).toBe(false);
  expect(input.hasAttribute('aria-invalid')).toBe(false);
});

test('a summary of problems takes the focus and leads to the field it names', () => {
  render(
    <ErrorSummary
      problems={[
        { code: 'bad', field: 'dueAt', message: 'This hour does not exist.' },
        { code: 'gone', message: 'The class was deleted.' },
      ]}
    />,
  );
  expect(document.activeElement).toBe(screen.getByRole('alert'));
  const links = screen.getAllByRole('link');
  expect(links.map((link) => link.getAttribute('href'))).toEqual(['#dueAt']);
});

test('a busy button keeps its focus and does nothing', async () => {
  const pressed = vi.fn();
  render(
    <Button busy onClick={pressed}>
      Save
    </Button>,
  );
  const button = screen.getByRole('button', { name: 'Save' });
  await userEvent.click(button);
  expect(pressed).not.toHaveBeenCalled();
  expect(document.activeElement).toBe(button);
  expect(button.getAttribute('aria-disabled')).toBe('true');
});

test('radios are one group, chosen by label, and tell who keeps the state', async () => {
  const chosen = vi.fn();
  render(
    <RadioGroup
      legend="Feedback"
      name="feedback"
      value="at-once"
      onValueChange={chosen}
      options={[
        { value: 'at-once', label: 'At once' },
        { value: 'after-due', label: 'After the due time', hint: 'For tests' },
      ]}
    />,
  );
  expect(screen.getByRole('group', { name: 'Feedback' })).toBeTruthy();
  await userEvent.click(screen.getByLabelText('After the due time'));
  expect(chosen).toHaveBeenCalledExactlyOnceWith('after-due');
});

test('a checkbox is ticked by its label', async () => {
  render(<Checkbox label="Allow practice" hint="As often as wanted" name="practice" />);
  await userEvent.click(screen.getByText('Allow practice'));
  const box = screen.getByRole('checkbox', { name: 'Allow practice' });
  expect(box).toHaveProperty('checked', true);
});

test('no utility outdoes the colours of a ticked box, which the style sheet sets', () => {
  expect(choiceLook).not.toMatch(/(^|\s)(bg-|border-[a-z])/);
});

test.each([
  [82.4, '82', '82'],
  [-5, '0', '0'],
  [130, '100', '100'],
])('a meter of %s says %s and never leaves its scale', (value, said, now) => {
  render(<Meter label="Hit rate" value={value} />);
  const meter = screen.getByRole('meter', { name: 'Hit rate' });
  expect(meter.getAttribute('aria-valuetext')).toBe(said);
  expect(meter.getAttribute('aria-valuenow')).toBe(now);
});
