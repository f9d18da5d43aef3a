import { readFileSync } from 'node:fs';
import path from 'node:path';
import { cleanup, render, screen, waitFor, within, fireEvent } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { decodeCatalogue } from '@/lib/sky/catalogue';
import { skyFrameAt } from '@/lib/sky/frame-at';
import { scenarioSchema } from '@/lib/pointing/scenario';
import { emptyPairDraft } from '@/lib/grading/pair-submission';
import type { PairLabProps, SubmitPair } from './pair-lab-props';
import type { PairLabSky } from './pair-lab-sky';
import { localTimeInWords } from './pair-lab-sky';
import { pairSkyPlaces } from './pair-sky-places';
import { PairWorkbench } from './pair-workbench';

const catalogue = decodeCatalogue(
  JSON.parse(readFileSync(path.join(process.cwd(), 'content/stars/catalogue.json'), 'utf8')),
);
const scenario = scenarioSchema.parse({
  place: { latitudeDeg: 51.5, longitudeDeg: -0.1, elevationM: 30 },
  localTime: '2026-12-05T18:10',
  timeZone: 'Europe/London',
  telescope: {
    focalLengthMm: 500,
    apertureMm: 80,
    computer: 'solved-zero',
    centringArcmin: 7.5,
    altitudeZeroArcmin: 30,
    coneArcmin: 8,
    axisSkewArcmin: 4,
  },
  eyepiece: { focalLengthMm: 9, apparentFieldDeg: 50 },
});
const sky: PairLabSky = {
  catalogueVersion: catalogue.version,
  frame: skyFrameAt({ instant: '2026-12-05T18:10:00Z', place: scenario.place }),
  horizon: [],
  clouds: [],
  task: 'free-pair',
  givenHip: null,
  proposals: null,
  kitName: 'Wren',
  placeName: 'Testham',
  localTimeText: localTimeInWords(scenario.localTime),
  nakedEyeLimit: 5,
  extinction: 0.25,
  settings: scenario.settings,
  telescope: scenario.telescope,
  eyepiece: scenario.eyepiece,
};

const scrolledTo = vi.fn();
// jsdom has no WebGL: the lab opens with the table, as it does in a browser without it.
beforeEach(() => {
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null);
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
  // jsdom lays nothing out and has no such function.
  Element.prototype.scrollIntoView = scrolledTo;
  window.sessionStorage.clear();
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

/** A … Z, AA, AB … */
const letterOf = (index: number): string =>
  (index < 26 ? '' : String.fromCharCode(64 + Math.floor(index / 26))) +
  String.fromCharCode(65 + (index % 26));

function open(props: Partial<PairLabProps> = {}) {
  const onSubmit = vi.fn<SubmitPair>(() =>
    Promise.resolve({ ok: true, value: { result: null, late: false } }),
  );
  render(
    <PairWorkbench
      sky={sky}
      catalogue={catalogue}
      mode="check"
      attemptKey="test"
      draft={emptyPairDraft}
      onSubmit={onSubmit}
      {...props}
    />,
  );
  return { user: userEvent.setup(), onSubmit };
}

/** By its text: asking by role walks the whole table each time. */
function press(text: string): void {
  const button = screen.getByText(text, { selector: 'button' });
  button.focus();
  expect(document.activeElement).toBe(button);
}

test('without WebGL the table opens by itself and says so', async () => {
  open();
  expect(screen.getByText(/cannot draw the sky, so the table is open instead/)).toBeTruthy();
  // The table comes in a file of its own, which a busy machine takes a while to read.
  const lights = await screen.findAllByRole('radio', {}, { timeout: 10_000 });
  expect(lights.length).toBeGreaterThan(20);
});

test('the table gives no names away and lists some sixty lights at first', async () => {
  open();
  const radios = await screen.findAllByRole('radio');
  expect(radios.length).toBeLessThanOrEqual(60);
  const letters = radios.map((radio) => radio.closest('label')?.textContent);
  const order = Array.from({ length: radios.length }, (_, index) => letterOf(index));
  expect(letters).toEqual(order);
  for (const name of ['Capella', 'Vega', 'Deneb', 'Saturn', 'Jupiter'])
    expect(screen.queryByText(name)).toBeNull();
});

test('positions in the table are rounded to half a fist', async () => {
  open();
  await screen.findAllByRole('radio');
  const cells = screen
    .getAllByRole('row')
    .slice(1)
    .flatMap((row) => within(row).getAllByRole('cell').slice(0, 2));
  for (const cell of cells) expect(Number(/^(\d+)°/.exec(cell.textContent)?.[1]) % 5).toBe(0);
});

test('the whole task is done by keyboard: two stars, their look-alikes, review, submit', async () => {
  const { user, onSubmit } = open();
  const radios = await screen.findAllByRole('radio');
  radios[3]?.focus();
  await user.keyboard(' ');
  press('Keep as first star');
  await user.keyboard('{Enter}');
  expect(screen.getByRole('status').textContent).toMatch(/^Kept as first star: /);

  radios[20]?.focus();
  await user.keyboard(' ');
  press('Keep as second star');
  await user.keyboard('{Enter}');

  for (let star = 0; star < 2; star += 1) {
    press('Nothing near it');
    await user.keyboard('{Enter}');
  }
  const heading = screen.getByText('Read it once more before you submit');
  expect(document.activeElement).toBe(heading);
  press('Submit');
  await user.keyboard('{Enter}');
  await screen.findByText('Your answer has arrived');
  expect(onSubmit.mock.calls[0]?.[0].submission).toMatchObject({
    kind: 'pair',
    stars: [{ lookAlike: null }, { lookAlike: null }],
  });
});

test('after a lost connection the same answer goes out again under the same key', async () => {
  const { user, onSubmit } = open();
  onSubmit.mockRejectedValueOnce(new TypeError('Failed to fetch'));
  await user.click(screen.getByRole('button', { name: 'Tonight has no good pair' }));
  await user.click(screen.getByRole('button', { name: 'Submit' }));
  expect(await screen.findByText(/kept on this device/)).toBeTruthy();
  const again = screen.getByRole('button', { name: 'Send again' });
  expect(scrolledTo.mock.contexts.some((box) => box instanceof Node && box.contains(again))).toBe(
    true,
  );
  await user.click(again);
  await screen.findByRole('heading', { name: 'Your answer has arrived' });
  const keys = onSubmit.mock.calls.map(([input]) => input.idempotencyKey);
  expect(keys).toHaveLength(2);
  expect(keys[0]).toBe(keys[1]);
});

test('a refused submission is told in the server’s words and nothing is lost', async () => {
  const { user } = open({
    onSubmit: () =>
      Promise.resolve({ ok: false, problem: { code: 'x', message: 'No attempts are left.' } }),
  });
  await user.click(screen.getByRole('button', { name: 'Tonight has no good pair' }));
  await user.click(screen.getByRole('button', { name: 'Submit' }));
  expect(await screen.findByText('No attempts are left.')).toBeTruthy();
  expect(screen.getByRole('button', { name: 'Go back to choosing' })).toBeTruthy();
});

test('a light that does not twinkle cannot be kept as a star', async () => {
  const { user } = open();
  await screen.findAllByRole('radio');
  const saturn = pairSkyPlaces(sky, catalogue).labelled.find((light) => light.planet === 'saturn');
  expect(saturn).toBeDefined();
  await user.click(screen.getByLabelText(saturn?.letter ?? ''));
  expect(screen.getByText(/it is no star/, { selector: 'p.bg-sunken' })).toBeTruthy();
  expect(screen.queryByText(/Keep as/)).toBeNull();
});

test('the panel folds to one line and unfolds', async () => {
  const { user } = open();
  const fold = screen.getByRole('button', { name: /Choose your first star/ });
  // The table is open, and on a phone its rows must show.
  expect(fold.getAttribute('aria-expanded')).toBe('false');
  await user.click(fold);
  expect(fold.getAttribute('aria-expanded')).toBe('true');
  await user.click(fold);
  expect(fold.getAttribute('aria-expanded')).toBe('false');
});

test('hints come one at a time in practice and not at all in a check', async () => {
  const { user } = open({ mode: 'practice', attemptKey: 'practice' });
  for (let hint = 0; hint < 3; hint += 1)
    await user.click(screen.getByRole('button', { name: /Show a/ }));
  expect(
    within(screen.getByRole('region', { name: 'Hints' })).getAllByRole('listitem'),
  ).toHaveLength(3);
  expect(screen.queryByRole('button', { name: /Show a/ })).toBeNull();
  cleanup();
  open();
  expect(screen.queryByRole('region', { name: 'Hints' })).toBeNull();
});

test('without a server to save to, a reload in the same tab finds the picks again', async () => {
  const first = open({ mode: 'practice', attemptKey: 'kept' });
  const radios = await screen.findAllByRole('radio');
  await first.user.click(radios[5] ?? document.body);
  await first.user.click(screen.getByRole('button', { name: 'Keep as first star' }));
  cleanup();
  open({ mode: 'practice', attemptKey: 'kept' });
  await waitFor(() => expect(screen.queryByText('No first star yet')).toBeNull());
});

test('what is done next stands after the panel, also when that is folded, and a double click answers once', async () => {
  const { user, onSubmit } = open();
  const radios = await screen.findAllByRole('radio');
  const next = screen.getByRole('group', { name: 'What next' });
  const panel = screen.getByRole('complementary', { name: 'Task and answer' });
  expect(panel.contains(next)).toBe(false);
  expect(panel.compareDocumentPosition(next)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
  await user.click(radios[3] ?? document.body);
  await user.click(within(next).getByText('Keep as first star'));
  await user.click(radios[20] ?? document.body);
  await user.click(within(next).getByText('Keep as second star'));
  fireEvent.click(within(next).getByText('Nothing near it'), { detail: 1 });
  fireEvent.click(within(next).getByText('Nothing near it'), { detail: 2 });
  expect(within(next).getByText('Nothing near it')).toBeTruthy();
  fireEvent.click(within(next).getByText('Nothing near it'), { detail: 1 });
  fireEvent.click(within(next).getByText('Submit'), { detail: 2 });
  expect(onSubmit).not.toHaveBeenCalled();
  await user.click(within(next).getByText('Submit'));
  expect(onSubmit).toHaveBeenCalledTimes(1);
});
