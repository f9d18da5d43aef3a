import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { manyBenchTasks } from '@/tests/support/bench-tasks';
import { fieldModelAnswer } from '@/lib/grading/bench/field/field-model-answer';
import { gradeField } from '@/lib/grading/bench/field/grade-field';
import type { FieldSubmission } from '@/lib/grading/bench/field/field-submission';
import { fieldTemplates } from '@/lib/variants/bench/field/field-variant';
import { generateField } from '@/lib/variants/bench/field/generate-field';
import { FieldLab } from './field-lab';

beforeEach(() => {
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
});
afterEach(cleanup);

test.each(manyBenchTasks(generateField, fieldTemplates, 1))(
  'whoever uses the table alone gets full marks: $template',
  async (variant) => {
    const user = userEvent.setup();
    const model = fieldModelAnswer(variant);
    const sent: unknown[] = [];
    render(
      <FieldLab
        variant={variant}
        mode="check"
        attemptKey={`field ${variant.template}`}
        draft={null}
        onSubmit={({ submission }) => {
          sent.push(submission);
          return Promise.resolve({ ok: true, value: { result: null, late: false } });
        }}
      />,
    );
    await user.click(screen.getByRole('button', { name: 'Table' }));
    expect(screen.queryByRole('img')).toBeNull();
    const eyepiece = variant.eyepieces.find(({ id }) => id === model.eyepieceId);
    await user.click(
      screen.getByRole('radio', {
        name: eyepiece === undefined ? 'None will do' : `${String(eyepiece.focalLengthMm)} mm`,
      }),
    );
    // By tenths of a millimetre, as far as the keys of the twin go.
    const name = `Focuser ${model.focusMm > 0 ? 'out' : 'in'} a tenth of a millimetre`;
    for (let step = 0; step < Math.round(Math.abs(model.focusMm) * 10); step++)
      await user.click(screen.getByRole('button', { name }));
    const type = async (label: RegExp, value: number | null) => {
      if (value !== null) await user.type(screen.getByLabelText(label), String(value));
    };
    await type(/^How much sky/, model.fieldArcmin);
    await type(/^With the mount off/, model.driftSeconds);
    await type(/^How close/, model.limitArcsec);
    for (const way of [model.way, model.view]) {
      if (way === null) continue;
      await user.click(
        screen.getByRole('radio', { name: way.along === 'left' ? 'Left' : 'Right' }),
      );
      const ends = way.up === 'up' ? /^(Up|Above the middle)$/ : /^(Down|Below the middle)$/;
      await user.click(screen.getByRole('radio', { name: ends }));
    }
    await user.click(screen.getByRole('button', { name: 'That is my work' }));
    expect(document.activeElement?.textContent).toBe('Read it once more before you submit');
    await user.click(screen.getByRole('button', { name: 'Submit' }));
    expect(sent).toHaveLength(1);
    const grading = gradeField({ variant, submission: sent[0] as FieldSubmission });
    expect(grading.ok && grading.result.total).toBeCloseTo(100, 9);
  },
  60_000,
);

test('what cannot be read stays as it was typed, and is said', async () => {
  const [variant] = manyBenchTasks(generateField, ['whole-moon'], 1);
  if (variant === undefined) throw new Error('no task');
  const user = userEvent.setup();
  render(
    <FieldLab
      variant={variant}
      mode="practice"
      attemptKey="field moon"
      draft={null}
      onSubmit={() => Promise.reject(new Error('not sent here'))}
    />,
  );
  const field = screen.getByLabelText(/^How much sky/);
  await user.type(field, 'half a degree');
  expect((field as HTMLInputElement).value).toBe('half a degree');
  expect(screen.getByText(/^Type a number from 0 to 6000/)).toBeTruthy();
  await user.clear(field);
  await user.type(field, '32,5');
  expect(screen.queryByText(/^Type a number/)).toBeNull();
  await user.click(screen.getByRole('button', { name: 'Undo' }));
  expect((field as HTMLInputElement).value).not.toBe('32,5');
});
