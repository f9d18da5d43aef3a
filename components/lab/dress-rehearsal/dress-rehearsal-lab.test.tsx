import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import {
  dressRehearsalSubmissionSchema,
  emptyDressRehearsalDraft,
  type DressRehearsalDraft,
  type DressRehearsalSubmission,
} from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import { packUpSteps } from '@/lib/rehearsal/pack-up';
import type { RehearsalStage } from '@/lib/rehearsal/stages';
import { catalogue, markOf, rehearsalOf, rehearsed } from '@/tests/support/rehearsal';
import { packUpName } from './pack-up-words';
import { RehearsalWorkbench } from './rehearsal-workbench';
import { runBeginsAgainText, stageWords } from './stage-words';

const variant = rehearsalOf('from-the-boxes', 0);
const model = rehearsed(variant);

// jsdom has no WebGL: the run opens with its table, as it does in a browser without it.
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

function open(draft: DressRehearsalDraft) {
  const sent: DressRehearsalSubmission[] = [];
  render(
    <RehearsalWorkbench
      variant={variant}
      catalogue={catalogue}
      mode="check"
      attemptKey="evening"
      draft={draft}
      onSubmit={({ submission }) => {
        const read = dressRehearsalSubmissionSchema.parse(submission);
        sent.push(read);
        const result = markOf(variant, read);
        return Promise.resolve({ ok: true, value: { result, late: false } });
      }}
    />,
  );
  return { user: userEvent.setup(), sent };
}
type User = ReturnType<typeof userEvent.setup>;

/** Tab, as often as it takes; then Enter. */
async function press(user: User, control: HTMLElement) {
  for (let presses = 0; presses < 120 && document.activeElement !== control; presses += 1)
    await user.tab();
  expect(document.activeElement).toBe(control);
  await user.keyboard('{Enter}');
}
const path = () => within(screen.getByRole('navigation', { name: 'Stages of the evening' }));
const stageButton = (stage: RehearsalStage) =>
  path().getByRole('button', {
    name: new RegExp(`^(\\d+ ?)?${stageWords[stage].short}, `),
  });
const button = (name: string | RegExp) => screen.getByRole('button', { name });
const shown = () => screen.getByRole('status').textContent;

test('by keyboard in the tables: the tube is laid, the pair planned, the telescope put away and the evening handed in', async () => {
  const { user, sent } = open({ ...emptyDressRehearsalDraft, benches: model.benches });
  expect(stageButton('level').textContent).toContain(', done');
  expect(stageButton('start-position').textContent).toContain('not done yet');
  await press(user, button('Table'));

  await press(user, stageButton('start-position'));
  expect(document.activeElement).toBe(stageButton('start-position'));
  await press(user, button('Lock both clutches'));
  expect(shown()).toContain('Lay the tube at its start position first');
  const [, second] = model.log;
  const start = model.log[0];
  if (start?.do !== 'set-start' || second === undefined) throw new Error('no start');
  const bearing = (start.azimuthDeg - variant.telescope.declinationDeg + 360) % 360;
  await user.type(screen.getByLabelText(/^The compass/), bearing.toFixed(1));
  await user.type(screen.getByLabelText(/^The level/), start.altitudeDeg.toFixed(1));
  await press(user, button('Lay it like this'));
  await press(user, button('Lock both clutches'));
  expect(stageButton('start-position').textContent).toContain(', done');

  await press(user, button(/^Go on/));
  expect(stageButton('pick-the-pair').getAttribute('aria-current')).toBe('step');
  expect(screen.queryByRole('img')).toBeNull();
  await user.selectOptions(screen.getByLabelText('First star'), String(model.plannedPair.first));
  await user.selectOptions(screen.getByLabelText('Second star'), String(model.plannedPair.second));
  // What is planned on paper moves no tube.
  expect(stageButton('start-position').textContent).toContain(', done');

  await press(user, stageButton('pack-up'));
  await press(user, button(packUpName('tube-level')));
  // The focus stays among the cards.
  expect(document.activeElement?.closest('ul')).toBe(button(packUpName('caps-on')).closest('ul'));
  for (const step of packUpSteps.slice(1)) await user.click(button(packUpName(step)));
  expect(screen.getByText('Nothing is left.')).toBeTruthy();
  await press(user, button('That was my evening'));
  await press(user, button('Submit'));
  expect(
    await screen.findByRole('heading', { level: 1, name: 'Dress rehearsal: how it came out' }),
  ).toBeTruthy();
  expect(sent[0]?.packedUp).toEqual(packUpSteps);
  expect(sent[0]?.plannedPair).toEqual(model.plannedPair);
  expect(sent[0]?.clutchesLocked).toBe(true);
  // A tube that only lies at its start is no run.
  expect(sent[0]?.log).toEqual([]);
  expect(screen.getByText(/^Align on two stars: not finished\.$/)).toBeTruthy();
});

test('a perfect evening is read once more and comes out ready for the field', async () => {
  const { user } = open({ ...model, at: 'pack-up' });
  await user.click(button('That was my evening'));
  expect(screen.getByText('Pack up: Put away, in this order')).toBeTruthy();
  await user.click(button('Submit'));
  expect(await screen.findByText(/^Ready for the field/)).toBeTruthy();
  expect(screen.queryByText('What to do differently')).toBeNull();
});

test('going back to the tripod after a confirmed star begins the alignment again, and says so', async () => {
  const { user } = open({ ...model, at: 'alignment-run', log: model.log.slice(0, -1) });
  expect(stageButton('alignment-run').textContent).toContain(', done');
  await user.click(stageButton('level'));
  await user.click(button('Table'));
  expect(stageButton('alignment-run').textContent).toContain(', done');
  const answer = screen.getAllByRole('radio', { checked: false })[0];
  if (answer === undefined) throw new Error('nothing to answer');
  await user.click(answer);
  expect(shown()).toContain(runBeginsAgainText);
  expect(stageButton('alignment-run').textContent).toContain('not done yet');
  await user.click(stageButton('alignment-run'));
  expect(screen.getAllByText('The tube has no start position')).not.toEqual([]);
});

test('without power the alignment does not begin, and the way back to it is one press', async () => {
  const { power } = emptyDressRehearsalDraft.benches;
  const { user } = open({ ...model, log: [], benches: { ...model.benches, power }, at: 'pack-up' });
  await user.click(stageButton('alignment-run'));
  expect(screen.getAllByText('The computer is dark')).not.toEqual([]);
  await user.click(button('Back to: Power'));
  expect(stageButton('power').getAttribute('aria-current')).toBe('step');
});

test('the run takes up the evening’s log, and a clutch loosed under it leaves only the start', async () => {
  const { user } = open({ ...model, at: 'alignment-run', log: model.log.slice(0, -1) });
  expect(await screen.findByText('Would you observe with this alignment?')).toBeTruthy();
  await user.click(stageButton('start-position'));
  await user.click(button('Clutches locked'));
  expect(shown()).toContain(runBeginsAgainText);
  expect(stageButton('alignment-run').textContent).toContain('not done yet');
});
