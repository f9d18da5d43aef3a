import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { perfectLog } from '@/lib/alignment/perfect-operator';
import type { RunLog } from '@/lib/alignment/run-log';
import { randomRunNights } from '@/tests/support/run-nights';
import { ChooseControl } from './choose-control';
import { HandControl } from './hand-control';
import { runLabVariant, type RunLabVariant } from './run-lab-variant';
import { RunModel } from './run-model';
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

test('a second press on “Another star” within a moment skips no star', () => {
  const now = vi.spyOn(performance, 'now').mockReturnValue(5000);
  const log = vi.fn<(length: number) => void>();
  const proposals = catalogue.stars.flatMap(({ hip, name }) => (name === null ? [] : [hip]));
  const model = new RunModel({
    variant: { ...own, proposals },
    catalogue,
    mode: 'check',
    log: perfect.slice(0, 1),
    onLog: ({ length }) => {
      log(length);
    },
  });
  render(<ChooseControl model={model} />);
  const first = model.snapshot().proposedHip;
  act(() => {
    button('Another star').click();
  });
  const second = model.snapshot().proposedHip;
  expect(second).not.toBe(first);
  now.mockReturnValue(5400);
  act(() => {
    button('Another star').click();
  });
  expect(model.snapshot().proposedHip).toBe(second);
  now.mockReturnValue(5700);
  act(() => {
    button('Another star').click();
  });
  expect(model.snapshot().proposedHip).not.toBe(second);
  expect(log).toHaveBeenCalledTimes(2);
});

test('a second press on “This is the star” within a moment is not taken, a later one is', () => {
  const now = vi.spyOn(performance, 'now').mockReturnValue(5000);
  const end = perfect.findIndex(({ do: what }) => what === 'this-is-the-star');
  const model = new RunModel({
    variant: own,
    catalogue,
    mode: 'check',
    log: perfect.slice(0, end),
    onLog: () => undefined,
  });
  model.preferLessMotion(true);
  const confirm = vi.spyOn(model, 'confirm').mockReturnValue(false);
  render(<HandControl model={model} inTable={false} onJudge={() => undefined} />);
  const press = (atMs: number) => {
    now.mockReturnValue(atMs);
    act(() => {
      button('This is the star').click();
    });
  };
  press(5000);
  press(5500);
  expect(confirm).toHaveBeenCalledTimes(1);
  press(5700);
  expect(confirm).toHaveBeenCalledTimes(2);
});

test('“Another star” is offered beside a star of one’s own choice, not beside a given one', async () => {
  const user = open(perfect.slice(0, 1), { ...own, givenHip: night.best[0] });
  await user.click(button('Drive there'));
  expect(screen.queryByText('Another star')).toBeNull();
  await user.click(button('This is the star'));
  await user.selectOptions(
    screen.getByLabelText('The star you will centre'),
    String(night.best[1]),
  );
  await user.click(button('Drive there'));
  expect(button('Another star')).toBeTruthy();
});

test('the start position can be set again beside the picture, until the first star is gone to', async () => {
  const user = open([], { ...own, givenHip: night.best[0] });
  await user.click(button('Lock the clutches'));
  await user.click(button('Set the start position again'));
  expect(focused()).toBe('Set the start position');
  await user.click(button('Lock the clutches'));
  expect(focused()).toBe('Choose the first star');
  await user.click(button('Drive there'));
  expect(screen.queryByText('Set the start position again')).toBeNull();
});

test('a Sun that is near is told of outside the sheet, which may be folded', () => {
  const { sun } = own.frame;
  // The tube is set to true north and level; the Sun stands 33° beside it.
  const near = {
    ...own.frame,
    sun: { ...sun, azimuthDeg: 33, altitudeDeg: 0, trueAltitudeDeg: 0 },
  };
  open([{ at: 0, do: 'set-start', azimuthDeg: 0, altitudeDeg: 0 }], { ...own, frame: near });
  const warning = screen.getByText(/^The Sun is \d+° from the telescope$/);
  expect(warning.closest('aside')).toBeNull();
  expect(screen.getByText(/Do not come nearer than 30°/)).toBeTruthy();
});
