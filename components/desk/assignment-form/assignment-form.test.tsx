import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { assignmentInputSchema, defaultAssignmentPolicy } from '@/lib/data/assignment-input';
import { scenarioSchema } from '@/lib/pointing/scenario';
import { nextTitles } from '@/app/(teacher)/desk/next-title';
import type { DraftSource } from './assignment-draft';
import { AssignmentForm } from './assignment-form';
import type { AssignmentFormActions, SaveAnswer } from './form-actions';

const push = vi.hoisted(() => vi.fn());
vi.mock('next/navigation', () => ({ useRouter: () => ({ push }) }));
afterEach(() => {
  cleanup();
  push.mockClear();
});

const source: DraftSource = {
  placeIsSet: true,
  title: 'An evening',
  placeName: 'Bergen, Norway',
  scenario: scenarioSchema.parse({
    place: { latitudeDeg: 60.39, longitudeDeg: 5.32 },
    horizon: [{ azimuthDeg: 0, altitudeDeg: 5 }],
    localTime: '2026-12-05T19:30',
    timeZone: 'Europe/Oslo',
    telescope: {
      focalLengthMm: 650,
      apertureMm: 130,
      centringArcmin: 2,
      altitudeZeroArcmin: 30,
      coneArcmin: 5,
      axisSkewArcmin: 5,
      computer: 'fixed-zero',
    },
    eyepiece: { focalLengthMm: 25, apparentFieldDeg: 50 },
  }),
  kitId: null,
  siteId: null,
  parts: [
    {
      lab: 'pick-the-pair',
      templates: ['free-pair', 'partner'],
      windowMinutes: 40,
      minutesAllowed: null,
      weight: 1,
    },
  ],
  lessons: [],
  weight: 1,
  needsSignOff: false,
  policy: defaultAssignmentPolicy,
  dueLocalTime: '2026-12-06T19:30',
  dueTimeZone: 'Europe/Oslo',
};

function open(answers: SaveAnswer[], isOver = false) {
  const save = vi.fn<AssignmentFormActions['save']>();
  for (const answer of answers) save.mockResolvedValueOnce(answer);
  const lookUpMoment = vi
    .fn<AssignmentFormActions['lookUpMoment']>()
    .mockImplementation(({ localTime }) =>
      Promise.resolve({ ok: true, text: '', sunIsUp: false, isOver: localTime < '2026-12-01' }),
    );
  render(
    <AssignmentForm
      source={source}
      dueIsOver={isOver}
      kits={[]}
      sites={[]}
      zones={[]}
      titles={{
        ...nextTitles([]),
        'pick-the-pair': 'An evening',
        'alignment-run': 'A run',
        'what-went-wrong': 'A riddle',
      }}
      lessons={[
        { slug: 'level-enough', title: 'Level enough', minutes: { learn: 15, practise: 5 } },
      ]}
      withPresets
      givenTo={{ className: 'Year 8', studentCount: 12 }}
      saveLabel="Save and see"
      actions={{
        searchPlaces: () => Promise.resolve([]),
        lookUpMoment,
        duskTonight: () =>
          Promise.resolve({ ok: true, localTime: '2026-12-05T17:08', text: 'Dusk is at 17:08.' }),
        save,
      }}
    />,
  );
  return { save, user: userEvent.setup() };
}
const press = (user: ReturnType<typeof userEvent.setup>) =>
  user.click(screen.getByText('Save and see'));
const labOf = (): HTMLElement => screen.getByLabelText('What students do');
const over = 'That is over already';

describe('the form of an assignment', () => {
  it('takes a mended field off the list at once and leaves the focus where it is', async () => {
    const { save, user } = open([]);
    const title = screen.getByLabelText('Title');
    const passMark = screen.getByLabelText(/^Pass mark/);
    await user.clear(title);
    await user.clear(passMark);
    await press(user);
    expect(save).not.toHaveBeenCalled();
    const summary = screen.getByRole('alert');
    expect(document.activeElement).toBe(summary);
    expect(within(summary).getAllByRole('link')).toHaveLength(2);

    await user.type(passMark, '60');
    expect(within(summary).getAllByRole('link')).toHaveLength(1);
    expect(passMark.getAttribute('aria-invalid')).toBeNull();
    expect(title.getAttribute('aria-invalid')).toBe('true');
    expect(document.activeElement).toBe(passMark);
    await user.type(title, 'A night');
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('cautions of a due time that is over, when it opens and as it is typed', async () => {
    const { user } = open([]);
    expect(screen.queryByText(over)).toBeNull();
    const date = screen.getByLabelText(/^Due date/);
    await user.clear(date);
    await user.type(date, '2026-11-20');
    expect(await screen.findByText(over)).toBeTruthy();
    cleanup();
    open([], true);
    expect(screen.getByText(over)).toBeTruthy();
  });

  it('saves what the server asks about only after a yes', async () => {
    const question = { title: 'Really?', text: 'It is over.', confirmLabel: 'Save it' };
    const { save, user } = open([
      { ok: false, question },
      { ok: false, question },
      { ok: true, href: '/there' },
    ]);
    await press(user);
    await user.click(await screen.findByText('Leave it'));
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(document.activeElement).toBe(screen.getByLabelText(/^Due date/));
    expect(push).not.toHaveBeenCalled();

    await press(user);
    await user.click(await screen.findByText('Save it'));
    expect(save.mock.calls.map(([, confirmed]) => confirmed)).toEqual([false, false, true]);
    expect(push).toHaveBeenCalledWith('/there');
  });

  it('says when dusk is only as long as date and place stay', async () => {
    const { user } = open([]);
    await user.click(screen.getByText('Tonight at nautical dusk'));
    expect(await screen.findByText('Dusk is at 17:08.')).toBeTruthy();
    const date = screen.getByLabelText('Date');
    await user.clear(date);
    await user.type(date, '2026-12-08');
    expect(screen.queryByText('Dusk is at 17:08.')).toBeNull();
  });

  it('asks for the lab first; its kinds of task and its title follow', async () => {
    const { save, user } = open([{ ok: true, href: '/there' }]);
    expect(screen.queryByLabelText(/^Time for full marks/)).toBeNull();
    await user.selectOptions(labOf(), 'Alignment run');
    expect(screen.getByDisplayValue('A run')).toBe(screen.getByLabelText('Title'));
    expect(screen.queryByText('A partner for a given star')).toBeNull();
    await user.click(screen.getByLabelText('The mount proposes'));
    await user.type(screen.getByLabelText(/^Time for full marks/), '15');
    await press(user);
    expect(save.mock.calls[0]?.[0].input).toMatchObject({
      title: 'A run',
      parts: [
        {
          lab: 'alignment-run',
          templates: ['own-choice', 'first-given', 'in-the-way', 'decoy'],
          minutesAllowed: 15,
        },
      ],
    });
  });

  it('asks for neither place nor time where lessons are asked about, and what stood there does no harm', async () => {
    const { save, user } = open([{ ok: true, href: '/there' }]);
    await user.clear(screen.getByLabelText('Name of the place'));
    await user.selectOptions(labOf(), 'Questions on lessons');
    expect(screen.queryByLabelText('Name of the place')).toBeNull();
    expect(screen.queryByLabelText(/^Window of time/)).toBeNull();
    await user.click(screen.getByLabelText('Finder by day'));
    await press(user);
    const input = assignmentInputSchema.safeParse(save.mock.calls[0]?.[0].input);
    expect(input.data).toMatchObject({
      parts: [{ lab: 'lesson-questions', templates: ['what-is-in-the-case', 'finder-by-day'] }],
    });
  });

  it('keeps a title of the teacher’s own, and sends no time where it cannot count', async () => {
    const { save, user } = open([{ ok: true, href: '/there' }]);
    await user.type(screen.getByLabelText('Title'), ' indoors');
    await user.selectOptions(labOf(), 'Alignment run');
    await user.type(screen.getByLabelText(/^Time for full marks/), '15');
    await user.selectOptions(labOf(), 'What went wrong?');
    await press(user);
    expect(save.mock.calls[0]?.[0].input).toMatchObject({
      title: 'An evening indoors',
      parts: [{ lab: 'what-went-wrong', minutesAllowed: null }],
    });
  });

  it('sets a whole lesson at one choice, and takes it back', async () => {
    const { save, user } = open([{ ok: true, href: '/there' }]);
    await user.selectOptions(
      screen.getByLabelText('Start from'),
      'A 45-minute lesson on: Level enough',
    );
    expect(screen.getByDisplayValue('Level enough')).toBe(screen.getByLabelText('Title'));
    await user.click(screen.getByText('Undo this'));
    expect(screen.getByDisplayValue('An evening')).toBe(screen.getByLabelText('Title'));
    await user.selectOptions(
      screen.getByLabelText('Start from'),
      'A 45-minute lesson on: Level enough',
    );
    await press(user);
    const input = assignmentInputSchema.safeParse(save.mock.calls[0]?.[0].input);
    expect(input.data).toMatchObject({
      title: 'Level enough',
      lessons: ['level-enough'],
      parts: [
        { lab: 'level', windowMinutes: 0, weight: 1 },
        { lab: 'lesson-questions', templates: ['level-enough'], weight: 1 },
      ],
    });
  });

  it('adds a part, moves it, weighs it and takes it away; what is wrong names its part', async () => {
    const { save, user } = open([{ ok: true, href: '/there' }]);
    await user.selectOptions(screen.getByLabelText('Another part'), 'Questions: Finder by day');
    await user.click(screen.getByText('Add the part'));
    const weights = screen.getAllByLabelText('Weight');
    expect(weights).toHaveLength(2);
    await user.clear(screen.getAllByLabelText('Weight')[1] as HTMLElement);
    await press(user);
    expect(save).not.toHaveBeenCalled();
    expect(screen.getByRole('alert').textContent).toContain('Part 2: weight of the part');
    await user.type(screen.getAllByLabelText('Weight')[1] as HTMLElement, '2,5');
    await user.click(screen.getByText('Move up'));
    await press(user);
    expect(save.mock.calls[0]?.[0].input).toMatchObject({
      parts: [
        { lab: 'lesson-questions', templates: ['finder-by-day'], weight: 2.5 },
        { lab: 'pick-the-pair', weight: 1 },
      ],
    });
    await user.click(screen.getAllByText('Take away')[0] as HTMLElement);
    expect(screen.queryByLabelText('Weight')).toBeNull();
    await user.click(screen.getByText('Undo this'));
    expect(screen.getAllByLabelText('Weight')).toHaveLength(2);
  });

  it('leads to its parts and tells what is set in them', () => {
    open([]);
    const parts = within(screen.getByRole('navigation', { name: 'Parts of the form' }));
    for (const link of parts.getAllByRole('link')) {
      expect(document.getElementById(link.getAttribute('href')?.slice(1) ?? '')).toBeTruthy();
    }
    expect(parts.getByText('5 Dec 2026, 19:30')).toBeTruthy();
    expect(parts.getByText('two attempts, the best counts, due 6 Dec 2026, 19:30')).toBeTruthy();
  });

  it('says in short, beside the button, what will be given to whom and until when', async () => {
    const { user } = open([]);
    expect(screen.getByText(/^Pick the pair, for all 12/).textContent).toBe(
      'In short: Pick the pair, for all 12 students of Year 8. Due 6 Dec 2026, 19:30 (Europe/Oslo); two attempts, the best counts.',
    );
    await user.click(screen.getByLabelText('Level enough'));
    await user.clear(screen.getByLabelText('Attempts'));
    expect(
      screen.getByText(
        /and the lesson “Level enough” to read, for all 12 .*any number of attempts, the best counts/,
      ),
    ).toBeTruthy();
  });

  it('folds away what has good defaults, and says on the fold what holds', async () => {
    const { user } = open([]);
    const foldOf = (label: RegExp | string) => screen.getByLabelText(label).closest('details');
    const attempts = foldOf('Attempts');
    expect(attempts?.open).toBe(false);
    expect(attempts?.querySelector('summary')?.textContent).toBe(
      'Attempts and pass mark: two attempts, the best counts, pass mark 70',
    );
    await user.clear(screen.getByLabelText('Attempts'));
    await user.type(screen.getByLabelText('Attempts'), '1');
    expect(attempts?.querySelector('summary')?.textContent).toContain('one attempt, pass mark 70');
    expect(foldOf('Name of the place')?.querySelector('summary')?.textContent).toContain(
      'Bergen, Norway',
    );
  });

  it('opens a fold with something wrong in it, and keeps it open until and after it is mended', async () => {
    const { save, user } = open([{ ok: true, href: '/there' }]);
    const grace = screen.getByLabelText(/^Grace/);
    const fold = grace.closest('details');
    await user.clear(grace);
    await user.type(grace, 'some');
    expect(fold?.open).toBe(false);
    await press(user);
    expect(save).not.toHaveBeenCalled();
    expect(fold?.open).toBe(true);
    await user.click(screen.getByText('Late work'));
    expect(fold?.open).toBe(true);
    await user.clear(grace);
    await user.type(grace, '20');
    expect(fold?.open).toBe(true);
    expect(screen.queryByRole('alert')).toBeNull();
    await press(user);
    expect(save.mock.calls[0]?.[0].input).toMatchObject({ policy: { graceMinutes: 20 } });
  });

  it('asks for a window of time only where the moment plays a part, and sends none elsewhere', async () => {
    const { save, user } = open([{ ok: true, href: '/there' }]);
    const window = screen.getByLabelText(/^Window of time/);
    await user.clear(window);
    await user.type(window, 'soon');
    await user.selectOptions(labOf(), 'Level');
    expect(screen.queryByLabelText(/^Window of time/)).toBeNull();
    expect(screen.queryByText(/window of time/)).toBeNull();
    await press(user);
    expect(save.mock.calls[0]?.[0].input).toMatchObject({
      parts: [{ lab: 'level', windowMinutes: 0 }],
    });
  });
});
