import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { clockTask } from '@/tests/support/clock-tasks';
import type { MountForm } from '@/lib/clock/mount-form';
import { clockAndPlaceModelAnswer } from '@/lib/grading/bench/clock-and-place/clock-and-place-model-answer';
import { clockSlipCodes } from '@/lib/grading/bench/clock-and-place/clock-and-place-result';
import { gradeClockAndPlace } from '@/lib/grading/bench/clock-and-place/grade-clock-and-place';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import { ClockAndPlaceResultView } from './clock-and-place-result';
import { afterAlignmentText, clockSlipWords } from './clock-result-words';

afterEach(cleanup);

function resultWith(variant: ClockAndPlaceVariant, slip: Partial<MountForm>) {
  const model = clockAndPlaceModelAnswer(variant);
  const submission = { ...model, form: { ...model.form, ...slip } };
  const grading = gradeClockAndPlace({ variant, submission });
  if (!grading.ok) throw new Error(grading.refusal.code);
  return grading.result;
}

describe('what came of it', () => {
  it('says how far off in degrees and fists, why, and what to do next', () => {
    const variant = clockTask('result', 'enter-the-card', 1);
    const result = resultWith(variant, { summerTime: false });
    render(<ClockAndPlaceResultView variant={variant} result={result} />);
    expect(screen.getByText(/The first slew would miss by 1\d\.\d°, about/)).toBeDefined();
    expect(screen.getByText('Summer time was left off.')).toBeDefined();
    expect(screen.getByText(/is summer time in force tonight/)).toBeDefined();
    expect(screen.getByText(/the base would seem to lean by 9\.\d°/)).toBeDefined();
    expect(screen.getByText(/would stay 0\.5° off/)).toBeDefined();
    expect(screen.getByRole('columnheader', { name: 'Summer time' })).toBeDefined();
  });

  it('has nothing to say of an alignment where nothing is off', () => {
    const variant = clockTask('right', 'enter-the-card', 1);
    expect(afterAlignmentText(resultWith(variant, {}))).toBeNull();
  });

  it('knows of a wrong place that the Moon goes by the clock, and that was right', () => {
    const variant = clockTask('place', 'enter-the-card', 1);
    const after = afterAlignmentText(resultWith(variant, { longitudeDegrees: 12 }));
    expect(after).toContain('absorb');
    expect(after).toContain('goes by the clock alone');
  });

  it('has its own words for every slip there is', () => {
    const variant = clockTask('words', 'night-of-the-change', 1);
    const result = resultWith(variant, {});
    const said = clockSlipCodes.map((code) => {
      const { what, why, next } = clockSlipWords(variant, result, {
        code,
        rows: ['time' as const],
        missDeg: 15.04,
      });
      expect(`${what}${why}${next}`).not.toMatch(/undefined|NaN/);
      return what;
    });
    expect(new Set(said).size).toBe(clockSlipCodes.length);
  });
});
