import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { afterPenalty } from '@/lib/grading/counted-mark';
import { latePenalty } from '@/lib/grading/late-penalty';
import { weightedMean } from '@/lib/grading/weighted-mean';

// The two worked values of the gradebook in the published file of measurement values.
const { grade } = z
  .object({
    grade: z.array(z.object({ f: z.string(), v: z.number(), days: z.number().optional() })),
  })
  .parse(JSON.parse(readFileSync(path.join(import.meta.dirname, 'data/measurement.json'), 'utf8')));
const published = (words: string) => {
  const row = grade.find(({ f }) => f.startsWith(words));
  if (row === undefined) throw new Error(`${words} is not in the file`);
  return row;
};

test('20, 30 and 50 with 80, excused and 90', () => {
  const mean = weightedMean([
    { weight: 20, mark: 80, excused: false },
    { weight: 30, mark: null, excused: true },
    { weight: 50, mark: 90, excused: false },
  ]);
  // The file gives four decimals.
  expect(mean).toBeCloseTo(published('weighted').v, 4);
});

test('85, 25 hours late, with 15 minutes of grace, 10 % a day and at most 50 %', () => {
  const { share } = latePenalty({
    submittedAtMs: 25 * 3_600_000,
    dueAtMs: 0,
    graceMinutes: 15,
    penaltyPerDay: 0.1,
    cap: 0.5,
  });
  const { days, v } = published('85 raw');
  expect(share).toBeCloseTo(0.1 * (days ?? NaN), 12);
  expect(afterPenalty({ raw: 85, latePenalty: share })).toBe(v);
});
