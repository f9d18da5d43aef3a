'use client';

import {
  powerDraftSchema,
  emptyPowerDraft,
  type PowerDraft,
  type PowerSubmission,
} from '@/lib/grading/bench/power-submission';
import type { PowerVariant } from '@/lib/variants/bench/power-variant';
import type { BenchParts } from '../bench/bench-parts';
import { powerReview } from './power-review';

export const powerParts: BenchParts<PowerVariant, PowerDraft, PowerSubmission> = {
  emptyDraft: emptyPowerDraft,
  readDraft: (json) => powerDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft) => draft,
  missing: () => '',
  summary: () => 'Power',
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: () => null,
  Table: () => null,
  Panel: () => null,
  hints: () => [],
  review: powerReview,
};
