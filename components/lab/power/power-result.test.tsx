import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { gradePower } from '@/lib/grading/bench/power/grade-power';
import { powerModelAnswer } from '@/lib/grading/bench/power/power-model-answer';
import type { PowerSlip } from '@/lib/grading/bench/power/power-result';
import { nightAhead } from '@/lib/power/night';
import { nightOf } from '@/lib/variants/bench/power/power-variant';
import { randomFrom } from '@/lib/variants/random';
import { clickedAtRandom } from '@/tests/support/power-clicks';
import { manyPowerTasks, powerTask } from '@/tests/support/power-tasks';
import { PowerResultView } from './power-result';
import { slipWords } from './power-result-words';

afterEach(cleanup);

test('every slip of random hands is told with what happened, why, and what to do next', () => {
  const random = randomFrom('words');
  const told = new Set<PowerSlip['code']>();
  for (const variant of manyPowerTasks(60)) {
    const grading = gradePower({ variant, submission: clickedAtRandom(variant, random) });
    if (!grading.ok) throw new Error(grading.refusal.message);
    for (const slip of grading.result.slips) {
      told.add(slip.code);
      const words = Object.values(slipWords(slip));
      for (const text of words) {
        expect(text).toMatch(/^\S.*[.”]$/);
        expect(text).not.toMatch(/undefined|null|NaN|-\d/);
      }
    }
  }
  // Careless hands make nearly all of them.
  expect(told.size).toBeGreaterThanOrEqual(18);
});

test('a result draws the bench and tells the sum of the night step by step', () => {
  const variant = powerTask('sum', 'last-the-night');
  const night = nightOf(variant);
  if (night === null) throw new Error('holds its evening');
  const grading = gradePower({
    variant,
    submission: { ...powerModelAnswer(variant), runTimeHours: nightAhead(night).runTimeHours * 8 },
  });
  if (!grading.ok) throw new Error(grading.refusal.message);
  render(<PowerResultView variant={variant} result={grading.result} />);
  expect(screen.getByText(/their capacities do not add/)).toBeTruthy();
  expect(
    screen.getByText(new RegExp(`= ${nightAhead(night).runTimeHours.toFixed(1)} hours`)),
  ).toBeTruthy();
});

test('a failed gate is named with what it could have done', () => {
  const variant = powerTask('gate', 'choose-the-supply');
  const mains = variant.setup.supplies.find(({ form }) => form === 'mains-adapter');
  const model = powerModelAnswer(variant);
  const grading = gradePower({
    variant,
    submission: {
      ...model,
      actions: model.actions.map((one) =>
        one.do === 'plug' ? { do: 'plug', supply: mains?.id ?? '' } : one,
      ),
    },
  });
  if (!grading.ok) throw new Error(grading.refusal.message);
  render(<PowerResultView variant={variant} result={grading.result} />);
  expect(screen.getByText(/Not yet: a mains adapter outdoors/)).toBeTruthy();
  expect(screen.getByText('60 of 100')).toBeTruthy();
});
