import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { clockTask } from '@/tests/support/clock-tasks';
import { formEntries, type FormEntry, type MountForm } from '@/lib/clock/mount-form';
import { clockAndPlaceModelAnswer } from '@/lib/grading/bench/clock-and-place/clock-and-place-model-answer';
import {
  clockAndPlaceSubmissionSchema,
  emptyClockAndPlaceDraft,
} from '@/lib/grading/bench/clock-and-place/clock-and-place-submission';
import { openRows } from '@/lib/grading/bench/clock-and-place/clock-and-place-work';
import { gradeClockAndPlace } from '@/lib/grading/bench/clock-and-place/grade-clock-and-place';
import {
  clockAndPlaceTemplates,
  type ClockAndPlaceVariant,
} from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import type { BenchSession } from '../bench/bench-lab-props';
import { ClockAndPlaceLab } from './clock-and-place-lab';
import { clockAndPlaceParts } from './clock-and-place-parts';
import { clockAndPlaceText } from './clock-and-place-text';
import { dayOfYear, monthNames, offsetText, readingText, rowNames } from './clock-words';
import { verdictWords } from './verdict-words';

beforeEach(() => {
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
  Element.prototype.scrollIntoView = vi.fn();
  window.sessionStorage.clear();
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

/** The bench with a server behind it that marks at once. */
async function open(variant: ClockAndPlaceVariant, mode: 'practice' | 'check' = 'check') {
  const onSubmit: BenchSession['onSubmit'] = ({ submission }) => {
    const grading = gradeClockAndPlace({
      variant,
      submission: clockAndPlaceSubmissionSchema.parse(submission),
    });
    return Promise.resolve(
      grading.ok
        ? { ok: true, value: { result: grading.result, late: false } }
        : { ok: false, problem: grading.refusal },
    );
  };
  render(
    <ClockAndPlaceLab
      variant={variant}
      mode={mode}
      attemptKey={`test-${variant.template}`}
      draft={null}
      onSubmit={onSubmit}
    />,
  );
  await screen.findByRole('heading', { name: clockAndPlaceText.task });
  return userEvent.setup();
}
type User = ReturnType<typeof userEvent.setup>;

/** By keyboard alone: focus and Enter. */
async function press(user: User, name: string): Promise<void> {
  screen.getByRole('button', { name }).focus();
  await user.keyboard('{Enter}');
}
async function tick(user: User, box: HTMLElement): Promise<void> {
  box.focus();
  await user.keyboard(' ');
}
async function typeIn(user: User, field: HTMLElement, value: number): Promise<void> {
  field.focus();
  await user.keyboard('{Control>}a{/Control}');
  await user.keyboard(String(value));
}

/** Fills in a row with what is right. */
async function fillIn(user: User, row: FormEntry, right: MountForm): Promise<void> {
  const within_ = within(screen.getByRole('group', { name: rowNames[row] }));
  const choose = (label: string, text: string) =>
    user.selectOptions(within_.getByLabelText(label), text);
  switch (row) {
    case 'date':
      await typeIn(user, within_.getByLabelText('Day'), right.day);
      await choose('Month', monthNames[right.month - 1] ?? '');
      await typeIn(user, within_.getByLabelText('Year'), right.year);
      return;
    case 'time':
      await typeIn(user, within_.getByLabelText('Hour, 0 to 23'), right.hour);
      await typeIn(user, within_.getByLabelText('Minute'), right.minute);
      return;
    case 'zone':
      await choose('Without summer time', offsetText(right.zoneMinutes));
      return;
    case 'summer-time':
      await choose('Is it in force?', right.summerTime ? 'on' : 'off');
      return;
    case 'latitude':
      await typeIn(user, within_.getByLabelText('Degrees'), right.latitudeDegrees);
      await typeIn(user, within_.getByLabelText('Minutes'), right.latitudeMinutes);
      await choose('Side', right.latitudeSide === 'N' ? 'north' : 'south');
      return;
    case 'longitude':
      await typeIn(user, within_.getByLabelText('Degrees'), right.longitudeDegrees);
      await typeIn(user, within_.getByLabelText('Minutes'), right.longitudeMinutes);
      await choose('Side', right.longitudeSide === 'E' ? 'east' : 'west');
  }
}

/** Everything that a careful learner does, in the table. */
async function solve(user: User, variant: ClockAndPlaceVariant): Promise<void> {
  const model = clockAndPlaceModelAnswer(variant);
  const { change } = variant;
  await tick(user, screen.getByRole('button', { name: 'Table' }));
  if (model.named !== null) {
    await tick(user, screen.getByRole('radio', { name: rowNames[model.named] }));
  }
  for (const row of model.flagged) await press(user, `${rowNames[row]} is wrong`);
  if (change !== null) {
    await tick(user, screen.getByRole('radio', { name: verdictWords[change.verdict] }));
    for (const index of change.canMean) {
      const reading = change.readings[index];
      if (reading === undefined) throw new Error('no such reading');
      const name = `${dayOfYear(reading)}, ${readingText(reading)}`;
      await tick(user, screen.getByRole('checkbox', { name }));
    }
    if (model.asked) await press(user, 'Ask who wrote the card');
  }
  for (const row of openRows(variant, model)) await fillIn(user, row, model.form);
  if (model.compassDeg !== null) {
    await typeIn(user, screen.getByLabelText('Bearing, 0 to 359.9'), model.compassDeg);
  }
}

describe('by keyboard, in the table', () => {
  it.each(clockAndPlaceTemplates)(
    '%s is done whole, and earns 100',
    async (template) => {
      const variant = clockTask('by keyboard', template, 1);
      const user = await open(variant);
      await solve(user, variant);
      await press(user, 'That is my work');
      expect(screen.getByRole('heading', { name: /Read it once more/ })).toBeDefined();
      await press(user, 'Submit');
      expect(await screen.findByText('100 of 100')).toBeDefined();
      expect(screen.getByText(/first slew will find the star/)).toBeDefined();
    },
    60_000,
  );
});

describe('the two skies', () => {
  it('are told apart in practice as soon as the form is full, and kept to oneself in a check', async () => {
    const variant = clockTask('skies', 'enter-the-card', 1);
    const user = await open(variant, 'practice');
    await tick(user, screen.getByRole('button', { name: 'Table' }));
    expect(screen.getByText(/The real sky. When the form is full/)).toBeDefined();
    expect(screen.queryByRole('columnheader', { name: 'The mount would point' })).toBeNull();
    for (const row of formEntries) {
      await fillIn(user, row, { ...variant.right, summerTime: false });
    }
    expect(
      screen.getByText(/On the whole the two lie 1\d\.\d°, about .* fists? apart/),
    ).toBeDefined();
    expect(screen.getByRole('columnheader', { name: 'It stands' })).toBeDefined();
    cleanup();
    window.sessionStorage.clear();

    const again = await open(variant, 'check');
    await tick(again, screen.getByRole('button', { name: 'Table' }));
    for (const row of formEntries) await fillIn(again, row, variant.right);
    expect(screen.getByText(/The sky that the mount will believe in/)).toBeDefined();
    expect(screen.queryByRole('columnheader', { name: 'It stands' })).toBeNull();
  });

  it('show where the first slews landed in a check too: that is the task', async () => {
    const variant = clockTask('landed', 'dew-on-the-card', 1);
    const user = await open(variant, 'check');
    await tick(user, screen.getByRole('button', { name: 'Table' }));
    expect(screen.getByText(/Where the first slews landed/)).toBeDefined();
    expect(screen.getAllByText('washed out')).toHaveLength(3);
  });
});

describe('what is still to do', () => {
  it('is said row by row', () => {
    const variant = clockTask('missing', 'enter-the-card');
    const { missing, submissionOf, summary } = clockAndPlaceParts;
    expect(missing(emptyClockAndPlaceDraft, variant)).toBe(
      'fill in date, time, hours from UTC, summer time, latitude and longitude.',
    );
    expect(submissionOf(emptyClockAndPlaceDraft, variant)).toBeNull();
    expect(summary(emptyClockAndPlaceDraft, variant)).toContain('0 of 6 rows');
    const model = clockAndPlaceModelAnswer(variant);
    expect(submissionOf(model, variant)).toEqual(model);
    expect(missing(model, variant)).toBe('');
  });

  it('begins in the night of the change with the question, and the rows wait for the answer', () => {
    const variant = clockTask('night', 'night-of-the-change', 1);
    const { missing } = clockAndPlaceParts;
    expect(missing(emptyClockAndPlaceDraft, variant)).toContain('how often');
    const said = { ...emptyClockAndPlaceDraft, verdict: 'twice' as const };
    expect(missing(said, variant)).toContain('two moments');
    expect(missing({ ...said, readings: [1, 2] }, variant)).toContain('ask');
    expect(openRows(variant, { ...said, readings: [1, 2] })).toEqual([]);
    expect(openRows(variant, { ...said, readings: [1, 2], asked: true })).toHaveLength(3);
  });
});

it('a row that is crossed out opens, and closes again as it was given', async () => {
  const variant = clockTask('crossed', 'check-the-form', 0);
  const user = await open(variant, 'practice');
  expect(screen.queryByLabelText('Without summer time')).toBeNull();
  await press(user, 'Hours from UTC is wrong');
  await user.selectOptions(screen.getByLabelText('Without summer time'), 'UTC+9:00');
  await press(user, 'Hours from UTC is wrong');
  expect(screen.queryByLabelText('Without summer time')).toBeNull();
  await press(user, 'Hours from UTC is wrong');
  const [zone] = screen.getAllByRole<HTMLSelectElement>('combobox');
  expect(zone?.value).toBe(String(variant.given.zoneMinutes));
});
