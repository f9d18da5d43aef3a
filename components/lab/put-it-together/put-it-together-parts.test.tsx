import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { manyBenchTasks } from '@/tests/support/bench-tasks';
import { gradePutItTogether } from '@/lib/grading/bench/put-it-together/grade-put-it-together';
import { putItTogetherModelAnswer } from '@/lib/grading/bench/put-it-together/put-it-together-model-answer';
import {
  putItTogetherSubmissionSchema,
  type PutItTogetherSubmission,
} from '@/lib/grading/bench/put-it-together/put-it-together-submission';
import { generatePutItTogether } from '@/lib/variants/bench/put-it-together/generate-put-it-together';
import { putItTogetherTemplates } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import { PutItTogetherLab } from './put-it-together-lab';
import { momentName, sightName } from './sight-words';
import { stepName } from './step-words';

beforeEach(() => {
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
});
afterEach(cleanup);

test.each(manyBenchTasks(generatePutItTogether, putItTogetherTemplates, 1))(
  'whoever uses the table alone gets full marks: $template',
  async (variant) => {
    const user = userEvent.setup();
    const model = putItTogetherModelAnswer(variant);
    const sent: PutItTogetherSubmission[] = [];
    render(
      <PutItTogetherLab
        variant={variant}
        mode="check"
        attemptKey={`put-it-together ${variant.template}`}
        draft={null}
        onSubmit={({ submission }) => {
          sent.push(putItTogetherSubmissionSchema.parse(submission));
          return Promise.resolve({ ok: true, value: { result: null, late: false } });
        }}
      />,
    );
    await user.click(screen.getByRole('button', { name: 'Table' }));
    expect(screen.queryByRole('img')).toBeNull();
    for (const step of model.order)
      await user.click(screen.getByRole('button', { name: stepName[step] }));
    for (const { moment } of variant.moments) {
      const group = screen.getByRole('group', { name: momentName[moment] });
      for (const sight of model.hazards[moment]) {
        const box = [...group.querySelectorAll('input')].find(
          (input) => input.name === `${moment}-${sight}`,
        );
        if (box === undefined) throw new Error(`${sightName[sight]} is not there`);
        await user.click(box);
      }
    }
    await user.click(screen.getByRole('button', { name: 'That is my work' }));
    await user.click(screen.getByRole('button', { name: 'Submit' }));
    const [submission] = sent;
    if (submission === undefined) throw new Error('nothing was sent');
    const grading = gradePutItTogether({ variant, submission });
    expect(grading.ok && grading.result.total).toBeCloseTo(100, 9);
  },
  60_000,
);

test('a step is taken back, done again by redo, and all of it undone by starting afresh', async () => {
  const [variant] = manyBenchTasks(generatePutItTogether, ['from-the-case'], 1);
  const [step] = variant?.cards ?? [];
  if (variant === undefined || step === undefined) throw new Error('no task');
  const user = userEvent.setup();
  render(
    <PutItTogetherLab
      variant={variant}
      mode="practice"
      attemptKey="put-it-together undo"
      draft={null}
      onSubmit={() => Promise.reject(new Error('not sent here'))}
    />,
  );
  const card = () => screen.queryByRole('button', { name: stepName[step] });
  const press = (name: string) => user.click(screen.getByRole('button', { name }));
  await press(stepName[step]);
  expect(card()).toBeNull();
  await press('Undo');
  expect(card()).not.toBeNull();
  await press('Redo');
  expect(card()).toBeNull();
  await press('Start afresh');
  expect(card()).not.toBeNull();
  await press('Undo');
  expect(card()).toBeNull();
  await press(`Take back: ${stepName[step]}`);
  expect(card()).not.toBeNull();
});

test('in a check a tube that fell stays fallen; in practice it may be taken back', async () => {
  const [variant] = manyBenchTasks(generatePutItTogether, ['from-the-case'], 1);
  if (variant === undefined) throw new Error('no task');
  const user = userEvent.setup();
  for (const mode of ['check', 'practice'] as const) {
    const { unmount } = render(
      <PutItTogetherLab
        variant={variant}
        mode={mode}
        attemptKey={`put-it-together ${mode}`}
        draft={null}
        onSubmit={() => Promise.reject(new Error('not sent here'))}
      />,
    );
    const press = (name: string) => user.click(screen.getByRole('button', { name }));
    for (const step of ['bolt-mount', 'open-clamp', 'tube-on', 'let-go'] as const)
      await press(stepName[step]);
    const fell = () => screen.queryByRole('img', { name: /The tube has fallen/ });
    expect(fell()).not.toBeNull();
    await press('Undo');
    await press('Start afresh');
    await press('Undo');
    if (mode === 'check') {
      expect(fell()).not.toBeNull();
      expect(screen.getByText(/What happened has happened/)).toBeTruthy();
    } else expect(fell()).toBeNull();
    unmount();
  }
});
