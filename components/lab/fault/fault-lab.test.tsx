import { readFileSync } from 'node:fs';
import path from 'node:path';
import { cleanup, render, screen, within } from '@testing-library/react';
import { renderToString } from 'react-dom/server';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { emptyFaultDraft } from '@/lib/grading/fault-submission';
import { decodeCatalogue } from '@/lib/sky/catalogue';
import { faultPiece } from '@/lib/variants/fault-seen';
import { faultResult, faultyEvening } from '@/tests/support/faulty-evening';
import { FaultLab } from './fault-lab';
import type { FaultLabProps, SubmitFault } from './fault-lab-props';
import { faultView, wholeFaultView } from './fault-view';
import type { LookUp } from './look-asker';

const catalogue = decodeCatalogue(
  JSON.parse(readFileSync(path.join(process.cwd(), 'content/stars/catalogue.json'), 'utf8')),
);
const evening = faultyEvening();
const about = { placeName: 'Testham', catalogue };
const variant = faultView(evening, about);
/** A server that answers at once. */
const onLook: LookUp = (ask) =>
  Promise.resolve({ ok: true, value: faultPiece(evening, ask, catalogue) });

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
      onLook={onLook}
      {...props}
    />,
  );
  return { user: userEvent.setup(), onSubmit };
}

const focusIsOn = (text: string) =>
  vi.waitFor(() => {
    expect(document.activeElement?.textContent).toBe(text);
  });

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
  await focusIsOn('The settings card');
  expect(screen.getByText('Entered at the start')).toBeTruthy();

  const stars = screen.getByRole('combobox', { name: 'To which star?' });
  await user.selectOptions(stars, '11767');
  focus(screen.getByRole('button', { name: /Send the telescope there/ }));
  await user.keyboard('{Enter}');
  await focusIsOn('Your test slew');
  expect(screen.getByRole('status').textContent).toBe(
    'Polaris: 12′ too far left along the horizon, 3′ too high.',
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
  expect(await screen.findByText('The bubble sat in its ring.')).toBeTruthy();
});

test('without a server to save to, a reload in the same tab goes on where it was', async () => {
  const first = open({ mode: 'practice', attemptKey: 'kept' });
  await first.user.click(screen.getByRole('button', { name: /Look at it: The settings card/ }));
  await screen.findByText('Entered at the start');
  await first.user.click(screen.getByRole('radio', { name: 'The date' }));
  await first.user.click(screen.getByRole('button', { name: 'That is the fault' }));
  cleanup();
  open({ mode: 'practice', attemptKey: 'kept' });
  expect(await screen.findByText('Entered at the start')).toBeTruthy();
  expect(screen.getByText('You named: The date.')).toBeTruthy();
});

test('a page made without the tab’s draft takes it up in the browser without a word of complaint', async () => {
  const complained = vi.spyOn(console, 'error');
  const first = open({ mode: 'practice', attemptKey: 'again' });
  await first.user.click(screen.getByRole('button', { name: /Look at it: The settings card/ }));
  await screen.findByText('Entered at the start');
  cleanup();
  const lab = (
    <FaultLab
      variant={variant}
      mode="practice"
      attemptKey="again"
      draft={emptyFaultDraft}
      onSubmit={first.onSubmit}
      onLook={onLook}
    />
  );
  const container = document.createElement('div');
  document.body.append(container);
  container.innerHTML = renderToString(lab);
  expect(within(container).getByRole('status').textContent).toMatch(/laid out/);
  render(lab, { container, hydrate: true });
  expect(await screen.findByText('Entered at the start')).toBeTruthy();
  expect(complained).not.toHaveBeenCalled();
});

test('a draft that the server kept opens at its review', () => {
  const draft = { looked: ['card' as const], testSlew: 24608 };
  open({
    variant: faultView(evening, { ...about, seen: draft }),
    draft: { ...draft, fault: 'date', cure: 'correct-date' },
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

describe('a piece of evidence that has to be fetched', () => {
  const cardButton = { name: /: The settings card/ };
  /** A server whose answers the test gives, one by one. */
  function slowServer() {
    const answers: { give: (answer: Awaited<ReturnType<LookUp>>) => void; lose: () => void }[] = [];
    const lookUp = vi.fn<LookUp>(
      () =>
        new Promise((give, reject) => {
          answers.push({
            give,
            lose: () => {
              reject(new TypeError('the connection is gone'));
            },
          });
        }),
    );
    const last = () => {
      const answer = answers.at(-1);
      if (answer === undefined) throw new Error('nothing was asked');
      return answer;
    };
    return { lookUp, last };
  }
  const piece = (ask: Parameters<LookUp>[0]) => ({
    ok: true as const,
    value: faultPiece(evening, ask, catalogue),
  });

  test('is said to be on its way, asked for once, and charged when it is there', async () => {
    const { lookUp, last } = slowServer();
    const onSave = vi.fn(({ sequence }: { sequence: number }) =>
      Promise.resolve({ ok: true as const, value: { sequence } }),
    );
    const { user } = open({ onLook: lookUp, onSave });
    await user.click(screen.getByRole('button', cardButton));
    const card = within(screen.getByRole('region', { name: 'The settings card' }));
    expect(card.getByText('It is on its way …')).toBeTruthy();
    await user.click(screen.getByRole('button', cardButton));
    expect(lookUp).toHaveBeenCalledTimes(1);
    // Meanwhile the lab goes on, and what was chosen then is kept.
    await user.click(screen.getByRole('radio', { name: 'The date' }));
    last().give(piece('card'));
    expect(await screen.findByText('Entered at the start')).toBeTruthy();
    expect(document.activeElement).toBe(screen.getByRole('radio', { name: 'The date' }));
    await vi.waitFor(() => {
      expect(onSave.mock.calls.at(-1)?.[0]).toMatchObject({
        draft: { looked: ['card'], fault: 'date' },
      });
    });
  });

  test('is asked for again after a lost connection, and counts once', async () => {
    const { lookUp, last } = slowServer();
    const { user, onSubmit } = open({
      onLook: lookUp,
      draft: { ...emptyFaultDraft, fault: 'date', cure: 'correct-date' },
    });
    await user.click(screen.getByRole('button', cardButton));
    last().lose();
    expect((await screen.findByRole('alert')).textContent).toMatch(/No connection.*counted once/s);
    await user.click(screen.getByRole('button', { name: 'Try again: The settings card' }));
    expect(screen.queryByRole('alert')).toBeNull();
    last().give(piece('card'));
    await focusIsOn('The settings card');
    expect(lookUp.mock.calls.map(([ask]) => ask)).toEqual(['card', 'card']);
    await user.click(screen.getByRole('button', { name: 'Submit' }));
    expect(onSubmit.mock.calls[0]?.[0].submission.looked).toEqual(['card']);
  });

  test('that is refused says why, and nothing is charged', async () => {
    const { lookUp, last } = slowServer();
    const { user } = open({
      onLook: lookUp,
      draft: { ...emptyFaultDraft, fault: 'date', cure: 'correct-date' },
    });
    await user.click(screen.getByRole('button', cardButton));
    last().give({ ok: false, problem: { code: 'x', message: 'It was made elsewhere.' } });
    expect((await screen.findByRole('alert')).textContent).toMatch(/made elsewhere/);
    expect(screen.getByText('You asked for nothing beyond what lay open.')).toBeTruthy();
  });

  test('of a test slew without an answer goes to the same star again', async () => {
    const { lookUp, last } = slowServer();
    const { user } = open({ onLook: lookUp });
    await user.selectOptions(screen.getByRole('combobox', { name: 'To which star?' }), '11767');
    await user.click(screen.getByRole('button', { name: /Send the telescope there/ }));
    expect(screen.getByText('The telescope is on its way …')).toBeTruthy();
    last().lose();
    const again = await screen.findByRole('button', { name: 'Try again: your test slew' });
    const stars: HTMLSelectElement = screen.getByRole('combobox', { name: 'To which star?' });
    expect(stars.disabled).toBe(true);
    await user.click(again);
    last().give(piece({ testSlew: 11767 }));
    await focusIsOn('Your test slew');
    expect(lookUp.mock.calls.map(([ask]) => ask)).toEqual([
      { testSlew: 11767 },
      { testSlew: 11767 },
    ]);
  });

  test('was seen on another device: it lies here too, and is sent with the answer', async () => {
    const { user, onSubmit } = open({
      variant: faultView(evening, { ...about, seen: { looked: ['card'], testSlew: 11767 } }),
      draft: { ...emptyFaultDraft, fault: 'date', cure: 'correct-date' },
    });
    expect(screen.getByText('Entered at the start')).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Submit' }));
    expect(onSubmit.mock.calls[0]?.[0].submission).toMatchObject({
      looked: ['card'],
      testSlew: 11767,
    });
  });

  test('comes with the result, whether it was asked for or not', async () => {
    const { user } = open({
      draft: { ...emptyFaultDraft, fault: 'date', cure: 'correct-date' },
      onSubmit: () => {
        const result = faultResult({ named: 'date', cure: 'correct-date', tellTale: 'card' });
        const debrief = { result, variant: wholeFaultView(evening, about) };
        return Promise.resolve({ ok: true, value: { result: debrief, late: false } });
      },
    });
    await user.click(screen.getByRole('button', { name: 'Submit' }));
    expect(await screen.findByText('here it is', {}, { timeout: 5000 })).toBeTruthy();
  });
});
