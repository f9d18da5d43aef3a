import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { perfectLog } from '@/lib/alignment/perfect-operator';
import type { RunLog } from '@/lib/alignment/run-log';
import { randomRunNights } from '@/tests/support/run-nights';
import { runLabVariant, type RunLabVariant } from './run-lab-variant';
import { RunWorkbench } from './run-workbench';

// The picture's own parts need a browser; the panel and the hand control beside it do not.
vi.mock('@/components/sky/webgl-available', () => ({ webglAvailable: () => true }));
vi.mock('./run-scene', () => ({ RunScene: () => null }));

const night = [...randomRunNights('step by step', 1, [30, 60])][0];
if (night === undefined) throw new Error('no night');
const { catalogue } = night.input;
const own = runLabVariant(night.variant, { placeName: 'Testham' });
const perfect: RunLog = perfectLog(night.input);

beforeEach(() => {
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
  // Less motion: a slew is over at once.
  window.matchMedia = vi.fn<typeof window.matchMedia>(() =>
    Object.assign(new EventTarget(), {
      matches: true,
      media: '',
      onchange: null,
      addListener: () => undefined,
      removeListener: () => undefined,
    }),
  );
  window.sessionStorage.clear();
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

function open(log: RunLog, variant: RunLabVariant = own) {
  render(
    <RunWorkbench
      variant={variant}
      catalogue={catalogue}
      mode="check"
      attemptKey="steps"
      draft={{ log: [...log] }}
      onSubmit={() => Promise.resolve({ ok: true, value: { result: null, late: false } })}
    />,
  );
  return userEvent.setup();
}
const button = (text: string) => screen.getByText(text, { selector: 'button' });
const focused = () => document.activeElement?.textContent;

/** By keyboard, as someone does who does not use a pointer. */
async function enter(user: ReturnType<typeof userEvent.setup>, text: string): Promise<void> {
  act(() => {
    button(text).focus();
  });
  await user.keyboard('{Enter}');
}

test('after each step the focus is on the next one’s heading, not lost with the button', async () => {
  const user = open([], { ...own, givenHip: night.best[0] });
  expect(document.activeElement).toBe(document.body);
  await enter(user, 'Lock the clutches');
  expect(focused()).toBe('Choose the first star');
  await enter(user, 'Drive there');
  expect(focused()).toBe('Centre the first star');
  await enter(user, 'This is the star');
  expect(focused()).toBe('Choose the second star');
});

test('a focus that is elsewhere stays there', async () => {
  const user = open(perfect.slice(0, 1), { ...own, givenHip: night.best[0] });
  const elsewhere = button('Table');
  const press = button('Drive there');
  await user.click(press);
  expect(focused()).toBe('Centre the first star');
  act(() => {
    elsewhere.focus();
  });
  act(() => {
    button('This is the star').click();
  });
  expect(document.activeElement).toBe(elsewhere);
});
