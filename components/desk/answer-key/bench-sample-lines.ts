import type { AnswerLine } from '@/components/lab/bench/bench-parts';
import { balanceReview } from '@/components/lab/balance/balance-review';
import { clockAndPlaceReview } from '@/components/lab/clock-and-place/clock-and-place-review';
import { dressRehearsalReview } from '@/components/lab/dress-rehearsal/dress-rehearsal-review';
import { fieldReview } from '@/components/lab/field/field-review';
import { finderReview } from '@/components/lab/finder/finder-review';
import { levelReview } from '@/components/lab/level/level-review';
import { powerReview } from '@/components/lab/power/power-review';
import { putItTogetherReview } from '@/components/lab/put-it-together/put-it-together-review';
import type { LabSamples } from '@/lib/data/lab-tasks/lab-tasks';
import type { BenchLab } from '@/lib/variants/bench/bench-labs';

type SampleLines = { template: string; lines: readonly AnswerLine[] };

/** The model answer of each kind of task, in the lab's own words. */
export function benchSampleLines(preview: Extract<LabSamples, { lab: BenchLab }>): SampleLines[] {
  switch (preview.lab) {
    case 'put-it-together':
      return preview.variants.map(({ template, sample }) => ({
        template,
        lines: putItTogetherReview(sample.answer, sample.variant),
      }));
    case 'level':
      return preview.variants.map(({ template, sample }) => ({
        template,
        lines: levelReview(sample.answer, sample.variant),
      }));
    case 'balance':
      return preview.variants.map(({ template, sample }) => ({
        template,
        lines: balanceReview(sample.answer, sample.variant),
      }));
    case 'power':
      return preview.variants.map(({ template, sample }) => ({
        template,
        lines: powerReview(sample.answer, sample.variant),
      }));
    case 'finder':
      return preview.variants.map(({ template, sample }) => ({
        template,
        lines: finderReview(sample.answer, sample.variant),
      }));
    case 'field':
      return preview.variants.map(({ template, sample }) => ({
        template,
        lines: fieldReview(sample.answer, sample.variant),
      }));
    case 'clock-and-place':
      return preview.variants.map(({ template, sample }) => ({
        template,
        lines: clockAndPlaceReview(sample.answer, sample.variant),
      }));
    case 'dress-rehearsal':
      return preview.variants.map(({ template, sample }) => ({
        template,
        lines: dressRehearsalReview(sample.answer, sample.variant),
      }));
  }
}
