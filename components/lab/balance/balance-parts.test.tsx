import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { balanceModelAnswer } from '@/lib/grading/bench/balance/balance-model-answer';
import {
  balanceDraftSchema,
  balanceSubmissionSchema,
  type BalanceDraft,
} from '@/lib/grading/bench/balance/balance-submission';
import { gradeBalance } from '@/lib/grading/bench/balance/grade-balance';
import {
  balanceTemplates,
  type BalanceVariant,
} from '@/lib/variants/bench/balance/balance-variant';
import { balanceTask, manyBalanceTasks } from '@/tests/support/balance-tasks';
import type { BenchSession } from '../bench/bench-lab-props';
import { BalanceLab } from './balance-lab';
import { balanceParts } from './balance-parts';

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
async function open(
  variant: BalanceVariant,
  mode: 'practice' | 'check' = 'check',
  draft: BalanceDraft | null = null,
) {
  const sent: unknown[] = [];
  const onSubmit: BenchSession['onSubmit'] = ({ submission }) => {
    sent.push(submission);
    const grading = gradeBalance({
      variant,
      submission: balanceSubmissionSchema.parse(submission),
    });
    const answer: Awaited<ReturnType<BenchSession['onSubmit']>> = grading.ok
      ? { ok: true, value: { result: grading.result, late: false } }
      : { ok: false, problem: grading.refusal };
    return Promise.resolve(answer);
  };
  render(
    <BalanceLab
      variant={variant}
      mode={mode}
      attemptKey={`test-${variant.template}`}
      draft={draft}
      onSubmit={onSubmit}
    />,
  );
  await screen.findByRole('heading', { name: 'Balance the tube' });
  return { user: userEvent.setup(), sent };
}

type User = ReturnType<typeof userEvent.setup>;

const toTable = (user: User): Promise<void> => press(user, 'Table');

/** By keyboard alone: focus and Enter. */
async function press(user: User, name: string): Promise<void> {
  screen.getByRole('button', { name }).focus();
  await user.keyboard('{Enter}');
}

async function set(user: User, label: string, value: number): Promise<void> {
  const field = screen.getByLabelText<HTMLInputElement>(label);
  field.focus();
  field.select();
  await user.keyboard(`${String(Math.round(value))}{Enter}`);
}

async function doInTable(
  user: User,
  variant: BalanceVariant,
  action: BalanceDraft['actions'][number],
): Promise<void> {
  switch (action.do) {
    case 'foresee': {
      const names = {
        front: 'The front sinks',
        back: 'The back sinks',
        holds: 'It stays where it is',
      };
      screen.getByLabelText(names[action.moves]).focus();
      await user.keyboard(' ');
      return;
    }
    case 'hand':
      await press(user, action.on ? 'Hand on the tube' : 'Let go');
      return;
    case 'clamp':
      await press(user, action.open ? 'Open clamp' : 'Lock clamp');
      return;
    case 'stop':
      await press(user, action.in ? 'Stop screw in' : 'Stop screw out');
      return;
    case 'slide':
      await set(user, 'Slide until the clamp is at', action.toMm);
      return;
    case 'tip':
      await set(user, 'Raise the tube to', action.toDeg);
      return;
    case 'part': {
      const name = variant.parts.find(({ id }) => id === action.id)?.name ?? '';
      screen.getByRole('checkbox', { name: new RegExp(`^${name}`) }).focus();
      await user.keyboard(' ');
      return;
    }
    case 'pick-up':
      await press(user, 'Put it back, a hand under it');
  }
}

describe('the table', () => {
  it.each(balanceTemplates)(
    'leads to full marks by keyboard alone: %s',
    async (template) => {
      const variant = balanceTask('by-table', template);
      const { user, sent } = await open(variant);
      await toTable(user);
      const model = balanceModelAnswer(variant);
      for (const action of model.actions) await doInTable(user, variant, action);
      if (model.readingMm !== null) {
        screen.getByLabelText(/balance point is at/).focus();
        await user.keyboard(String(model.readingMm));
      }
      await press(user, 'That is my work');
      await screen.findByText('Read it once more before you submit');
      await press(user, 'Submit');
      await screen.findByText(/It holds everywhere between/);
      expect(sent).toHaveLength(1);
      expect(screen.getByText('100 of 100')).toBeTruthy();
    },
    60_000,
  );
});

describe('the bench', () => {
  it('refuses to be touched before it was said what is expected, and says so', async () => {
    const variant = balanceTask('first', 'first-balance');
    const { user } = await open(variant);
    await press(user, 'Let go');
    expect(screen.getByText(/First say in the panel what you expect/)).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Let go' })).toBeTruthy();
  });

  it('lets the tube be raised by arrow keys while a hand holds it, and slid while the clamp is open', async () => {
    const variant = balanceTask('keys', 'two-edges');
    const { user } = await open(variant);
    screen.getByRole('slider', { name: /raise or lower/ }).focus();
    await user.keyboard('{ArrowUp}{Shift>}{ArrowUp}{/Shift}');
    expect(screen.getByRole('slider').getAttribute('aria-valuetext')).toBe('altitude 11°');
    await user.keyboard('{Shift>}{ArrowDown}{ArrowDown}{/Shift}');
    await press(user, 'Stop screw out');
    await press(user, 'Open clamp');
    screen.getByRole('slider', { name: /slide it/ }).focus();
    await user.keyboard('{ArrowRight}{ArrowRight}');
    expect(screen.getByRole('slider').getAttribute('aria-valuenow')).toBe(
      String(variant.start.clampMm + 2),
    );
  });

  it('shows a fall, and lets nothing be done before the tube is picked up', async () => {
    const variant = balanceTask('fall', 'two-edges');
    const { user } = await open(variant);
    for (const name of ['Stop screw out', 'Open clamp', 'Let go']) await press(user, name);
    expect(screen.getByText('The tube slid out of the clamp and fell')).toBeTruthy();
    expect(screen.queryByRole('button', { name: 'Lock clamp' })).toBeNull();
    await press(user, 'Put it back, a hand under it');
    expect(screen.getByRole('button', { name: 'Let go' })).toBeTruthy();
  });

  it('lets a screw that came out go back in, in a check as well: nothing has happened yet', async () => {
    const { user } = await open(balanceTask('screw', 'two-edges'));
    await toTable(user);
    for (const name of ['Let go', 'Stop screw out', 'Stop screw in']) await press(user, name);
    expect(screen.getByRole('button', { name: 'Stop screw out' })).toBeTruthy();
    expect(screen.queryByText(/What happened has happened/)).toBeNull();
  });

  it('keeps the torques to itself in a check, where weights are unknown, and until a foresight', async () => {
    const known = balanceTask('torques', 'first-balance');
    const { user } = await open(known, 'practice');
    await toTable(user);
    expect(screen.queryByText(/Torque as it is now/)).toBeNull();
    await doInTable(user, known, { do: 'foresee', moves: 'front' });
    expect(screen.getByText(/Torque as it is now/)).toBeTruthy();
    cleanup();
    window.sessionStorage.clear();
    const check = await open(known);
    await toTable(check.user);
    await doInTable(check.user, known, { do: 'foresee', moves: 'front' });
    expect(screen.queryByText(/Torque as it is now/)).toBeNull();
    cleanup();
    window.sessionStorage.clear();
    const unknown = await open(balanceTask('torques', 'two-edges'), 'practice');
    await toTable(unknown.user);
    expect(screen.queryByText(/Torque as it is now/)).toBeNull();
    // Nor masses.
    expect(screen.queryByText(/\d kg/)).toBeNull();
  });

  it('writes down what letting go has shown', async () => {
    const variant = balanceTask('written', 'two-edges');
    const { user } = await open(variant);
    await toTable(user);
    await press(user, 'Let go');
    const row = screen.getByText(new RegExp('^The (front|back) sinks, to')).closest('tr');
    if (row === null) throw new Error('not in a table');
    expect(within(row).getByText(`${String(variant.start.clampMm)} mm`)).toBeTruthy();
    expect(within(row).getByText('as it was')).toBeTruthy();
  });
});

describe('a result', () => {
  it('says of every gate and slip what it was, why, and what to do next', async () => {
    const variant = balanceTask('worst', 'first-balance');
    const draft: BalanceDraft = {
      actions: [
        { do: 'foresee', moves: 'holds' },
        { do: 'hand', on: false },
        { do: 'part', id: 'eyepiece-25', on: false },
        { do: 'hand', on: true },
        { do: 'tip', toDeg: 60 },
        { do: 'stop', in: false },
        { do: 'clamp', open: true },
        { do: 'slide', toMm: variant.bar.leastMm },
        { do: 'clamp', open: false },
        { do: 'hand', on: false },
      ],
      readingMm: null,
    };
    const { user } = await open(variant, 'check', draft);
    await press(user, 'That is my work');
    await press(user, 'Submit');
    expect(await screen.findByText(/the hand left a tube that was not secured/)).toBeTruthy();
    expect(screen.getByText(/^It creeps: at/)).toBeTruthy();
    expect(screen.getByText(/Not on the tube: 25 mm eyepiece/)).toBeTruthy();
    expect(screen.getByText(/You expected: it stays where it is/)).toBeTruthy();
    expect(screen.getByText(/The clamp was opened with the tube raised to 60°/)).toBeTruthy();
  });
});

it('hints tell more each time, and none is empty', () => {
  for (const variant of manyBalanceTasks(3)) {
    const hints = balanceParts.hints(variant, balanceParts.emptyDraft);
    expect(hints).toHaveLength(3);
    expect(new Set(hints).size).toBe(3);
  }
});

it('a model answer reads as work that is complete', () => {
  for (const variant of manyBalanceTasks(3)) {
    const draft = balanceDraftSchema.parse(balanceModelAnswer(variant));
    expect(balanceParts.missing(draft, variant)).toBe('');
    expect(balanceParts.review(draft, variant).every(({ answer }) => answer !== '')).toBe(true);
  }
});
