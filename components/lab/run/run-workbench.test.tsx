import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { perfectLog } from '@/lib/alignment/perfect-operator';
import type { RunLog } from '@/lib/alignment/run-log';
import { emptyRunDraft } from '@/lib/grading/run-submission';
import { randomRunNights } from '@/tests/support/run-nights';
import { runLabVariant } from './run-lab-variant';
import type { RunLabProps, SubmitRun } from './run-lab-props';
import { RunModel } from './run-model';
import { RunWorkbench } from './run-workbench';
import { useSteeringKeys } from './steering-keys';

const night = [...randomRunNights('the workbench', 1, [30, 60])][0];
if (night === undefined) throw new Error('no night');
const { catalogue } = night.input;
const variant = runLabVariant(night.variant, { placeName: 'Testham' });
const perfect: RunLog = perfectLog(night.input);

// jsdom has no WebGL: the lab opens with the table, as it does in a browser without it.
beforeEach(() => {
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null);
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
  window.matchMedia = vi.fn<typeof window.matchMedia>(() =>
    Object.assign(new EventTarget(), {
      matches: false,
      media: '',
      onchange: null,
      addListener: () => undefined,
      removeListener: () => undefined,
    }),
  );
  Element.prototype.scrollIntoView = () => undefined;
  window.sessionStorage.clear();
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

function open(props: Partial<RunLabProps> = {}) {
  const onSubmit = vi.fn<SubmitRun>(() =>
    Promise.resolve({ ok: true, value: { result: null, late: false } }),
  );
  render(
    <RunWorkbench
      variant={variant}
      catalogue={catalogue}
      mode="check"
      attemptKey="test"
      draft={emptyRunDraft}
      onSubmit={onSubmit}
      {...props}
    />,
  );
  return { user: userEvent.setup(), onSubmit };
}
const button = (text: string) => screen.getByText(text, { selector: 'button' });
const judged = { log: [...perfect.slice(0, -1)] };

test('without WebGL the table opens by itself and says so', async () => {
  open();
  expect(screen.getByText(/cannot draw the sky, so the table is open instead/)).toBeTruthy();
  expect(await screen.findByText('Start position')).toBeTruthy();
});

test('the judgement is read once more, can be taken back, and ends the run when it is sent', async () => {
  const { user, onSubmit } = open({ draft: judged });
  await user.click(button('I trust it'));
  expect(document.activeElement?.textContent).toBe('Read it once more before you submit');
  expect(screen.getByText(/^You would observe/)).toBeTruthy();
  await user.click(button('Go back'));
  await user.click(button('I do not trust it'));
  await user.click(button('Submit'));
  await screen.findByText('Your answer has arrived');
  const log = onSubmit.mock.calls[0]?.[0].submission.log ?? [];
  expect(log.slice(0, -1)).toEqual(judged.log);
  expect(log.at(-1)).toMatchObject({ do: 'judge', trust: false });
});

test('after a lost connection the same run goes out again under the same key', async () => {
  const { user, onSubmit } = open({ draft: judged });
  onSubmit.mockRejectedValueOnce(new TypeError('Failed to fetch'));
  await user.click(button('I trust it'));
  await user.click(button('Submit'));
  expect(await screen.findByText(/kept on this device/)).toBeTruthy();
  expect(screen.queryByText('Go back')).toBeNull();
  await user.click(button('Send again'));
  await screen.findByText('Your answer has arrived');
  const [first, second] = onSubmit.mock.calls.map(([input]) => input);
  expect(second).toEqual(first);
});

test('hints and pausing are for practice', () => {
  const draft = { log: [...perfect.slice(0, 1)] };
  open({ draft, mode: 'practice' });
  expect(screen.getByRole('region', { name: 'Hints' })).toBeTruthy();
  cleanup();
  open({ draft });
  expect(screen.queryByRole('region', { name: 'Hints' })).toBeNull();
});

test('a run that was not sent to a server is found again in the same tab', async () => {
  const first = open({ mode: 'practice', attemptKey: 'kept' });
  await first.user.type(await screen.findByLabelText(/The compass along the tube/), '2');
  await first.user.type(screen.getByLabelText(/level/i), '0');
  await first.user.keyboard('{Enter}');
  expect(screen.getByText('Choose the first star', { selector: 'h2' })).toBeTruthy();
  cleanup();
  open({ mode: 'practice', attemptKey: 'kept' });
  expect(screen.getByText('Choose the first star', { selector: 'h2' })).toBeTruthy();
});

function Scene({ model }: { model: RunModel }) {
  const [speed, setSpeed] = useState(3);
  const keys = useSteeringKeys(model, speed, setSpeed, true);
  return (
    <div {...keys}>
      {/* eslint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- stands for the scene */}
      <div role="application" tabIndex={0}>
        scene
      </div>
      <button>beside</button>
    </div>
  );
}

test('arrow keys hold a strip while the scene has the focus, 1 to 5 set how far', async () => {
  const end = perfect.findIndex(({ do: what }) => what === 'this-is-the-star');
  const model = new RunModel({
    variant,
    catalogue,
    mode: 'check',
    log: perfect.slice(0, end),
    onLog: () => undefined,
  });
  model.tick(0);
  model.tick(900);
  render(<Scene model={model} />);
  const user = userEvent.setup();
  await user.click(screen.getByText('scene'));
  await user.keyboard('{ArrowRight>}');
  expect(model.snapshot().rockers).toEqual({ azimuth: 3, altitude: 0 });
  await user.keyboard('{ArrowDown>}5');
  expect(model.snapshot().rockers).toEqual({ azimuth: 5, altitude: -5 });
  await user.keyboard('{/ArrowRight}');
  expect(model.snapshot().rockers).toEqual({ azimuth: 0, altitude: -5 });
  // Leaving with a key down lets go of it.
  await user.tab();
  expect(model.snapshot().rockers).toEqual({ azimuth: 0, altitude: 0 });
  await user.keyboard('{/ArrowDown}{ArrowLeft>}');
  expect(model.snapshot().rockers, 'a button has the focus').toEqual({ azimuth: 0, altitude: 0 });
});
