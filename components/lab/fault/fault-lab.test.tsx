import { readFileSync } from 'node:fs';
import path from 'node:path';
import { cleanup, render, screen, within } from '@testing-library/react';
import { renderToString } from 'react-dom/server';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { emptyFaultDraft } from '@/lib/grading/fault-submission';
import { decodeCatalogue } from '@/lib/sky/catalogue';
import { faultyEvening } from '@/tests/support/faulty-evening';
import { FaultLab } from './fault-lab';
import type { FaultLabProps, SubmitFault } from './fault-lab-props';
import { faultView } from './fault-view';

const catalogue = decodeCatalogue(
  JSON.parse(readFileSync(path.join(process.cwd(), 'content/stars/catalogue.json'), 'utf8')),
);
const variant = faultView(faultyEvening(), { placeName: 'Testham', catalogue });

beforeEach(() => {
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
  // jsdom lays nothing out and has no such function.
  Element.prototype.scrollIntoView = vi.fn();
  window.sessionStorage.clear();
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

function open(props: Partial<FaultLabProps> = {}) {
  const onSubmit = vi.fn<SubmitFault>(() =>
    Promise.resolve({ ok: true, value: { result: null, late: false } }),
  );
  render(
    <FaultLab
      variant={variant}
      mode="check"
      attemptKey="test"
      draft={emptyFaultDraft}
      onSubmit={onSubmit}
      {...props}
    />,
  );
  return { user: userEvent.setup(), onSubmit };
}

const focus = (element: HTMLElement): void => {
  element.focus();
  expect(document.activeElement).toBe(element);
};

test('what is told without asking lies open, in figures; the rest lies face down', () => {
  open();
  const first = within(screen.getByRole('region', { name: 'The first slew' }));
  expect(first.getByText('9.4° too far left along the horizon')).toBeTruthy();
  expect(first.getByText('6.2° too high')).toBeTruthy();
  expect(screen.queryByText('Entered at the start')).toBeNull();
  expect(screen.getByRole('button', { name: /Look at it: The settings card/ })).toBeTruthy();
});

test('a right clock and map stand above the evidence', () => {
  open();
  const facts = within(screen.getByRole('region', { name: 'What is certain of the evening' }));
  expect(facts.getByText('Saturday 5 December 2026, 18:10')).toBeTruthy();
  expect(facts.getByText('+00:00 from UTC; no summer time now')).toBeTruthy();
  expect(facts.getByText('51.50° N, 0.10° W')).toBeTruthy();
});

test('the whole task is done by keyboard: look, test slew, fault, cure, review, submit', async () => {
  const { user, onSubmit } = open();
  focus(screen.getByRole('button', { name: /Look at it: The settings card/ }));
  await user.keyboard('{Enter}');
  // The button is gone; the focus goes on at what it opened.
  expect(document.activeElement?.textContent).toBe('The settings card');
  expect(screen.getByText('Entered at the start')).toBeTruthy();

  const stars = screen.getByRole('combobox', { name: 'To which star?' });
  await user.selectOptions(stars, '11767');
  focus(screen.getByRole('button', { name: /Send the telescope there/ }));
  await user.keyboard('{Enter}');
  expect(document.activeElement?.textContent).toBe('Your test slew');
  expect(screen.getByRole('status').textContent).toBe(
    'Polaris: 12′ too far left along the horizon, 3.0′ too high.',
  );
  expect(screen.queryByRole('button', { name: /Send the telescope there/ })).toBeNull();

  const named = screen.getByRole('radio', { name: 'The summer-time hour' });
  focus(named);
  await user.keyboard(' ');
  // Else the arrow keys would no longer move through the list.
  expect(document.activeElement).toBe(named);
  focus(screen.getByRole('button', { name: 'That is the fault' }));
  await user.keyboard('{Enter}');
  expect(document.activeElement?.textContent).toBe('What puts it right?');
  focus(screen.getByRole('radio', { name: 'Correct the summer-time entry' }));
  await user.keyboard(' ');
  focus(screen.getByRole('button', { name: 'That is the cure' }));
  await user.keyboard('{Enter}');
  expect(document.activeElement?.textContent).toBe('Read it once more before you submit');
  expect(
    screen.getByText('You asked for: the settings card, a test slew to Polaris.'),
  ).toBeTruthy();

  focus(screen.getByRole('button', { name: 'Submit' }));
  await user.keyboard('{Enter}');
  await screen.findByRole('heading', { name: 'Your answer has arrived' });
  expect(onSubmit.mock.calls[0]?.[0].submission).toEqual({
    looked: ['card'],
    testSlew: 11767,
    fault: 'summer-time',
    cure: 'correct-summer-time',
  });
});

test('undo takes a name back and leaves what was looked at', async () => {
  const { user } = open();
  expect(screen.getByText(/cannot be taken back/)).toBeTruthy();
  await user.click(screen.getByRole('button', { name: /Look at it: What a bystander noticed/ }));
  await user.click(screen.getByRole('radio', { name: 'The date' }));
  await user.click(screen.getByRole('radio', { name: 'The latitude' }));
  await user.click(screen.getByRole('button', { name: 'Undo' }));
  const date: HTMLInputElement = screen.getByRole('radio', { name: 'The date' });
  expect(date.checked).toBe(true);
  await user.click(screen.getByRole('button', { name: 'Undo' }));
  expect(date.checked).toBe(false);
  expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull();
  expect(screen.getByText('The bubble sat in its ring.')).toBeTruthy();
});

test('without a server to save to, a reload in the same tab goes on where it was', async () => {
  const first = open({ mode: 'practice', attemptKey: 'kept' });
  await first.user.click(screen.getByRole('button', { name: /Look at it: The settings card/ }));
  await first.user.click(screen.getByRole('radio', { name: 'The date' }));
  await first.user.click(screen.getByRole('button', { name: 'That is the fault' }));
  cleanup();
  open({ mode: 'practice', attemptKey: 'kept' });
  expect(screen.getByText('Entered at the start')).toBeTruthy();
  expect(screen.getByText('You named: The date.')).toBeTruthy();
});

test('a page made without the tab’s draft takes it up in the browser without a word of complaint', async () => {
  const complained = vi.spyOn(console, 'error');
  const first = open({ mode: 'practice', attemptKey: 'again' });
  await first.user.click(screen.getByRole('button', { name: /Look at it: The settings card/ }));
  cleanup();
  const lab = (
    <FaultLab
      variant={variant}
      mode="practice"
      attemptKey="again"
      draft={emptyFaultDraft}
      onSubmit={first.onSubmit}
    />
  );
  const container = document.createElement('div');
  document.body.append(container);
  container.innerHTML = renderToString(lab);
  expect(within(container).getByRole('status').textContent).toMatch(/laid out/);
  render(lab, { container, hydrate: true });
  expect(screen.getByText('Entered at the start')).toBeTruthy();
  expect(complained).not.toHaveBeenCalled();
});

test('a draft that the server kept opens at its review', () => {
  open({
    draft: { looked: ['card'], testSlew: 24608, fault: 'date', cure: 'correct-date' },
    nextSequence: 4,
  });
  expect(screen.getByRole('button', { name: 'Submit' })).toBeTruthy();
  expect(screen.getByText('10.1° too far right along the horizon')).toBeTruthy();
});

test('each change is sent to be saved under a number of its own', async () => {
  const onSave = vi.fn(({ sequence }: { sequence: number }) =>
    Promise.resolve({ ok: true as const, value: { sequence } }),
  );
  const { user } = open({ onSave, nextSequence: 3 });
  await user.click(screen.getByRole('radio', { name: 'The date' }));
  await vi.waitFor(() => {
    expect(onSave).toHaveBeenCalledWith({
      sequence: 3,
      draft: { ...emptyFaultDraft, fault: 'date' },
    });
  });
});

test('a fault may be changed from the review, and its cure is asked for again', async () => {
  const { user } = open({
    draft: { looked: [], testSlew: null, fault: 'date', cure: 'correct-date' },
  });
  await user.click(screen.getByRole('button', { name: 'Change the fault' }));
  expect(document.activeElement?.textContent).toBe('Which fault fits all of it?');
  await user.click(screen.getByRole('radio', { name: 'The time zone' }));
  await user.click(screen.getByRole('button', { name: 'That is the fault' }));
  const cure: HTMLInputElement = screen.getByRole('radio', { name: 'Correct the date' });
  expect(cure.checked).toBe(true);
});

test('hints come one at a time in practice, and not at all in a check', async () => {
  const { user } = open({ mode: 'practice' });
  for (let hint = 0; hint < 3; hint += 1)
    await user.click(screen.getByRole('button', { name: /Show a/ }));
  const hints = within(screen.getByRole('region', { name: 'Hints' }));
  expect(hints.getAllByRole('listitem')).toHaveLength(3);
  cleanup();
  open();
  expect(screen.queryByRole('region', { name: 'Hints' })).toBeNull();
});

test('a cure that needs care says so before it is sent', () => {
  open({ draft: { looked: [], testSlew: null, fault: 'finder-off', cure: 'set-the-finder' } });
  expect(screen.getByText('With care:').parentElement?.textContent).toMatch(/the Sun blinds/);
});

test('a refused answer is told in the server’s words and nothing is lost', async () => {
  const { user } = open({
    draft: { looked: [], testSlew: null, fault: 'date', cure: 'correct-date' },
    onSubmit: () =>
      Promise.resolve({ ok: false, problem: { code: 'x', message: 'No attempts are left.' } }),
  });
  await user.click(screen.getByRole('button', { name: 'Submit' }));
  expect(await screen.findByText('No attempts are left.')).toBeTruthy();
  expect(screen.getByRole('button', { name: 'Change the cure' })).toBeTruthy();
});
