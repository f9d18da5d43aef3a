'use client';

import {
  dressRehearsalDraftSchema,
  emptyDressRehearsalDraft,
  type DressRehearsalDraft,
  type DressRehearsalSubmission,
} from '@/lib/grading/bench/dress-rehearsal-submission';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal-variant';
import type { BenchParts } from '../bench/bench-parts';
import { dressRehearsalReview } from './dress-rehearsal-review';

export const dressRehearsalParts: BenchParts<
  DressRehearsalVariant,
  DressRehearsalDraft,
  DressRehearsalSubmission
> = {
  emptyDraft: emptyDressRehearsalDraft,
  readDraft: (json) => dressRehearsalDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft) => draft,
  missing: () => '',
  summary: () => 'Dress rehearsal',
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: () => null,
  Table: () => null,
  Panel: () => null,
  hints: () => [],
  review: dressRehearsalReview,
};
