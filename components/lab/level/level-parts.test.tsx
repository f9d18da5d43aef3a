import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { levelTask, manyLevelTasks } from '@/tests/support/level-tasks';
import { gradeLevel } from '@/lib/grading/bench/level/grade-level';
import { levelModelAnswer } from '@/lib/grading/bench/level/level-model-answer';
import {
  levelSubmissionSchema,
  type LevelSubmission,
} from '@/lib/grading/bench/level/level-submission';
import type { TripodAction } from '@/lib/levelling/tripod-actions';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { LevelLab } from './level-lab';
import { questionsOf } from './level-question';
import { LevelResultView } from './level-result';
import { legName } from './level-words';

beforeEach(() => {
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
  window.sessionStorage.clear();
});
afterEach(cleanup);

type User = ReturnType<typeof userEvent.setup>;

/** Enter on a button, as a keyboard has it. */
async function press(user: User, name: string | RegExp): Promise<void> {
  screen.getByRole('button', { name }).focus();
  await user.keyboard('{Enter}');
}

function open(variant: LevelVariant, mode: 'practice' | 'check' = 'check') {
  const sent: LevelSubmission[] = [];
  render(
    <LevelLab
      variant={variant}
      mode={mode}
      attemptKey={`level ${variant.template} ${mode}`}
      draft={null}
      onSubmit={({ submission }) => {
        sent.push(levelSubmissionSchema.parse(submission));
        return Promise.resolve({ ok: true, value: { result: null, late: false } });
      }}
    />,
  );
  return { user: userEvent.setup(), sent };
}

async function done(user: User, action: TripodAction): Promise<void> {
  switch (action.do) {
    case 'tread-in':
      return press(user, `Tread in foot ${legName(action.leg)}`);
    case 'open':
      return press(user, `Open leg ${legName(action.leg)}`);
    case 'lock':
      return press(user, `Lock leg ${legName(action.leg)}`);
    case 'slide': {
      const field = screen.getByLabelText(`Length of leg ${legName(action.leg)}`);
      await user.clear(field);
      await user.type(field, `${String(action.toMm)}{Enter}`);
      return;
    }
    case 'turn-arm':
      return press(user, 'Turn the arm half round');
    case 'tube-on':
      return press(user, 'Put the tube on');
    default:
      throw new Error(`a perfect operator has no need of "${action.do}"`);
  }
}

async function answered(
  user: User,
  { question }: LevelVariant,
  answers: LevelSubmission['answers'],
) {
  for (const { name, legend, options } of questionsOf(question)) {
    const group = screen.getByRole('group', { name: legend });
    const option = within(group).getByRole('radio', { name: options[answers[name]] });
    option.focus();
    await user.keyboard(' ');
  }
}

describe('the table of the tripod', () => {
  test.each(manyLevelTasks(1))(
    'leads to full marks by keyboard alone: $template',
    async (variant) => {
      const { user, sent } = open(variant);
      await press(user, 'Table');
      expect(screen.queryByRole('img')).toBeNull();
      const model = levelModelAnswer(variant);
      for (const action of model.actions) await done(user, action);
      await answered(user, variant, model.answers);
      await press(user, 'That is my work');
      expect(document.activeElement?.textContent).toBe('Read it once more before you submit');
      await press(user, 'Submit');
      expect(sent).toEqual([model]);
      const [submission = model] = sent;
      const grading = gradeLevel({ variant, submission });
      expect(grading.ok ? grading.result.total : 0).toBeCloseTo(100, 9);
    },
  );

  test('says why a locked leg does not slide, and that one leg is open at a time', async () => {
    const { user } = open(levelTask('one-slope'));
    await press(user, 'Table');
    await press(user, 'Open leg A');
    await press(user, 'Open leg B');
    expect(screen.getByText(/Another leg is open\. Lock it first/)).toBeTruthy();
    await press(user, 'Length of leg A: plus 10 mm');
    await press(user, 'Length of leg A: plus 10 mm');
    await press(user, 'Lock leg A');
    expect(screen.getByText(/Moves so far: 1/)).toBeTruthy();
  });

  test('hides the bubble while a leg is open where it is out of sight', async () => {
    const { user } = open(levelTask('read-then-move'));
    await press(user, 'Table');
    expect(screen.getByText(/^It is .* from the middle/)).toBeTruthy();
    await press(user, 'Open leg A');
    expect(screen.getByText('It is out of sight while a leg is open.')).toBeTruthy();
  });

  test.each(['practice', 'check'] as const)(
    'in %s a leg that is open when the tube comes on runs in, and a check takes it back no more',
    async (mode) => {
      const { user } = open(levelTask('one-slope'), mode);
      await press(user, 'Table');
      await press(user, 'Open leg C');
      await press(user, 'Put the tube on');
      expect(screen.getByText('Leg C ran in under the tube')).toBeTruthy();
      await press(user, /Undo/);
      const stillThere = screen.queryByText('Leg C ran in under the tube') !== null;
      expect(stillThere).toBe(mode === 'check');
    },
  );

  test('says what is still to be done', async () => {
    const { user } = open(levelTask('one-slope'));
    await press(user, 'Table');
    expect(screen.getByText(/put the tube on, once the head is level/)).toBeTruthy();
    await press(user, 'Open leg C');
    expect(screen.getByText(/lock leg C/)).toBeTruthy();
    await press(user, 'Lock leg C');
    await press(user, 'Put the tube on');
    await press(user, 'Have the weight held');
    expect(screen.getByText(/let the tripod carry the weight again/)).toBeTruthy();
    await press(user, 'Let the tripod carry it');
    expect(screen.getByText(/answer the three questions/)).toBeTruthy();
  });
});

describe('the drawing of the tripod', () => {
  test('is worked by keyboard too: locks are buttons and legs are sliders', async () => {
    const variant = levelTask('one-slope');
    const { user } = open(variant);
    const [{ startMm }] = variant.site.legs;
    const leg = () => screen.getByRole('slider', { name: 'Leg A' });
    leg().focus();
    await user.keyboard('{ArrowUp}');
    expect(leg().getAttribute('aria-valuenow')).toBe(String(startMm));
    expect(screen.getByText(/This leg is locked/)).toBeTruthy();
    await press(user, 'Open leg A');
    leg().focus();
    await user.keyboard('{ArrowUp}{Shift>}{ArrowUp}{/Shift}');
    expect(leg().getAttribute('aria-valuenow')).toBe(String(startMm + 11));
    await press(user, 'Lock leg A');
    expect(screen.getByText(/Moves so far: 1/)).toBeTruthy();
  });
});

test('the result names the tilt that is left, the leg that would mend it, and what it costs', () => {
  const variant = levelTask('read-then-move');
  const { answers } = levelModelAnswer(variant);
  const grading = gradeLevel({ variant, submission: { actions: [{ do: 'tube-on' }], answers } });
  if (!grading.ok) throw new Error(grading.refusal.code);
  render(<LevelResultView variant={variant} result={grading.result} />);
  expect(screen.getByText(/^Nothing was moved: the head leans by/)).toBeTruthy();
  expect(screen.getByText(/would have done most about it/)).toBeTruthy();
  expect(
    screen.getByRole('row', { name: /After two stars, centred well less than 0\.1′/ }),
  ).toBeTruthy();
});
