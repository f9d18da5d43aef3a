import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { finderModelAnswer } from '@/lib/grading/bench/finder/finder-model-answer';
import {
  finderDraftSchema,
  finderSubmissionSchema,
} from '@/lib/grading/bench/finder/finder-submission';
import { gradeFinder } from '@/lib/grading/bench/finder/grade-finder';
import { minus } from '@/lib/finder/sights';
import { finderTemplates, type FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { besideDotFrom, pressesFor, tubeWayFrom, turnsFrom } from '@/tests/support/finder-reading';
import { finderTasks } from '@/tests/support/finder-tasks';
import type { BenchSession } from '../bench/bench-lab-props';
import { FinderLab } from './finder-lab';
import { finderParts } from './finder-parts';
import { screwNames } from './finder-words';

beforeEach(() => {
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
  Element.prototype.scrollIntoView = vi.fn();
  window.sessionStorage.clear();
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

const task = (template: FinderVariant['template'], index = 0): FinderVariant => {
  const variant = finderTasks({ templates: [template], count: index + 1, name: 'by table' })[index];
  if (variant === undefined) throw new Error('no task');
  return variant;
};

/** The bench with a server behind it that marks at once; the table is opened. */
async function open(variant: FinderVariant, mode: 'practice' | 'check' = 'check') {
  const onSubmit: BenchSession['onSubmit'] = ({ submission }) => {
    const grading = gradeFinder({ variant, submission: finderSubmissionSchema.parse(submission) });
    return Promise.resolve(
      grading.ok
        ? { ok: true as const, value: { result: grading.result, late: false } }
        : { ok: false as const, problem: grading.refusal },
    );
  };
  render(
    <FinderLab
      variant={variant}
      mode={mode}
      attemptKey={`test-${variant.template}`}
      draft={null}
      onSubmit={onSubmit}
    />,
  );
  await screen.findByRole('heading', { name: 'Set the finder' });
  const user = userEvent.setup({ delay: null });
  await user.click(screen.getByRole('button', { name: 'Table' }));
  return user;
}
type User = ReturnType<typeof userEvent.setup>;

/** By the keyboard alone: focus, then Enter or Space. */
async function press(user: User, name: string | RegExp) {
  screen.getByRole('button', { name }).focus();
  await user.keyboard('{Enter}');
}
async function tick(user: User, name: string) {
  screen.getByRole('radio', { name }).focus();
  await user.keyboard(' ');
}
const section = (name: RegExp): string => screen.getByRole('region', { name }).textContent;

/** Brings a thing to the eyepiece's middle by reading and stepping. */
async function centre(user: User, variant: FinderVariant, which: 'low' | 'high', name: string) {
  const { orientation, eyepieces } = variant;
  const { radiusArcmin, focalLengthMm } = eyepieces[which];
  await press(user, `${String(focalLengthMm)} mm`);
  for (let go = 0; go < 6; go += 1) {
    const way = tubeWayFrom(section(/In the eyepiece/), name, { radiusArcmin, orientation });
    if (way === null) throw new Error(`not in view: ${section(/In the eyepiece/)}`);
    if (way.rightArcmin === 0 && way.upArcmin === 0) return;
    for (const [size, plus, less] of [
      [way.rightArcmin, 'Tube right', 'Tube left'],
      [way.upArcmin, 'Tube up', 'Tube down'],
    ] as const) {
      for (const { step, times } of pressesFor(size, [15, 5, 1, 0.5])) {
        await user.selectOptions(screen.getByLabelText(/One press moves/), String(step));
        for (let n = 0; n < times; n += 1) await press(user, size > 0 ? plus : less);
      }
    }
  }
}

async function turn(user: User, screw: 0 | 1, turns: number) {
  const name = screwNames[screw];
  for (const { step, times } of pressesFor(turns, [1, 0.25, 0.05])) {
    for (let n = 0; n < times; n += 1) {
      await press(user, `${name} ${String(step)} of a turn to the ${turns > 0 ? 'right' : 'left'}`);
    }
  }
}
function gap() {
  const beside = besideDotFrom(section(/In the finder/));
  if (beside === null) throw new Error(`not in the window: ${section(/In the finder/)}`);
  return beside;
}

/** Turns each screw a little, sees what it does, and goes to and fro until the dot covers the thing. */
async function bringDot(user: User) {
  const atFirst = gap();
  await turn(user, 0, 1);
  const afterOne = gap();
  await turn(user, 1, 1);
  const afterTwo = gap();
  const one = minus(atFirst, afterOne);
  const two = minus(afterOne, afterTwo);
  for (let go = 0; go < 6; go += 1) {
    const left = gap();
    if (left.rightArcmin === 0 && left.upArcmin === 0) return;
    const [first, second] = turnsFrom(left, one, two);
    await turn(user, 0, first);
    await turn(user, 1, second);
  }
}

async function setOn(user: User, variant: FinderVariant, option: RegExp | null, name: string) {
  if (option !== null) {
    const list = screen.getByLabelText('Set it on');
    await user.selectOptions(list, within(list).getByRole('option', { name: option }));
  }
  await press(user, 'Turn the tube straight there');
  await press(user, 'Take the caps off');
  await centre(user, variant, 'low', name);
  await centre(user, variant, 'high', name);
  await bringDot(user);
  await press(user, 'Lock the screws');
}

async function handIn(user: User) {
  await press(user, 'That is my work');
  await press(user, /^(Submit|Send)/);
  return screen.findByRole('heading', { name: /how it came out/ });
}

// jsdom reckons every role of a long page anew for each press.
vi.setConfig({ testTimeout: 60_000 });

describe('the table, by keyboard', () => {
  it('leads to full marks by day, with its words as the only guide', async () => {
    const variant = task('free-target');
    const user = await open(variant);
    await tick(user, 'An adult, who stays');
    await tick(user, 'In the shadow of a building that hides the Sun');
    await setOn(user, variant, /mast/, 'The mast');
    await press(user, 'Put the caps on');
    expect(screen.getByRole('button', { name: 'Take the caps off' })).toBeTruthy();
    await handIn(user);
    expect(screen.getByText(/^100 of 100$/)).toBeTruthy();
    expect(screen.queryByText(/Not yet/)).toBeNull();
  });

  it('leads to full marks at dusk on a finder that another has set', async () => {
    const variant = task('set-by-another', 2);
    const [light] = variant.dusk?.lights ?? [];
    if (light === undefined) throw new Error('no light');
    const user = await open(variant);
    await press(user, 'Loosen the screws');
    await setOn(user, variant, new RegExp(light.name), light.name);
    const { answers } = finderModelAnswer(variant);
    screen.getByLabelText(/how far from the eyepiece’s middle/).focus();
    await user.keyboard(String(answers.offArcmin));
    await tick(user, `${String(answers.setOnM)} m away`);
    await handIn(user);
    expect(screen.getByText(/^100 of 100$/)).toBeTruthy();
  });

  it('tells of the Sun in words, and of every target whether it lies inside the 30°', async () => {
    const variant = task('far-ones-by-the-sun');
    await open(variant);
    const rows = screen.getAllByRole('row').slice(1);
    expect(rows).toHaveLength(5);
    for (const row of rows) {
      const far = /mast|tower/.test(row.textContent);
      expect(row.textContent).toContain(far ? 'inside the 30°' : 'outside the 30°');
    }
    expect(screen.getByText(/The Sun blinds in an instant/)).toBeTruthy();
  });

  it('says at once in practice what must not happen by day, and in a check after it', async () => {
    const variant = task('free-target', 1);
    const user = await open(variant, 'practice');
    await press(user, 'Take the caps off');
    expect(screen.getAllByText(/no adult stood beside/).length).toBeGreaterThan(0);
    cleanup();
    window.sessionStorage.clear();
    const inCheck = await open(variant, 'check');
    await press(inCheck, 'Take the caps off');
    expect(screen.queryByText(/no adult stood beside/)).toBeNull();
  });

  it('will not turn a locked screw, and says so', async () => {
    const user = await open(task('set-by-another'));
    await press(user, 'Side screw 1 of a turn to the right');
    expect(screen.getByText(/The screws are locked. Loosen them first/)).toBeTruthy();
  });
});

describe('the parts', () => {
  it('read the model answer as work that is complete, and say it in words', () => {
    for (const template of finderTemplates) {
      const variant = task(template);
      const draft = finderDraftSchema.parse(finderModelAnswer(variant));
      expect(finderParts.missing(draft, variant)).toBe('');
      expect(finderParts.submissionOf(draft, variant)).toEqual(draft);
      expect(finderParts.summary(draft, variant)).toMatch(/locked$/);
      const lines = finderParts.review(draft, variant);
      expect(lines.length).toBeGreaterThan(2);
      expect(lines.every(({ answer }) => answer !== '' && !answer.includes('nothing'))).toBe(true);
      expect(finderParts.hints(variant, draft).length).toBeGreaterThan(0);
    }
  });

  it('ask for what is missing and read nothing that is no draft', () => {
    const variant = task('near-then-predict');
    expect(finderParts.missing(finderParts.emptyDraft, variant)).toMatch(/lock the screws/);
    expect(finderParts.submissionOf(finderParts.emptyDraft, variant)).toBeNull();
    expect(finderParts.readDraft({ actions: 'none' })).toBeNull();
  });
});
