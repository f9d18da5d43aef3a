'use client';

import {
  clockAndPlaceDraftSchema,
  emptyClockAndPlaceDraft,
  type ClockAndPlaceDraft,
  type ClockAndPlaceSubmission,
} from '@/lib/grading/bench/clock-and-place-submission';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place-variant';
import type { BenchParts } from '../bench/bench-parts';
import { clockAndPlaceReview } from './clock-and-place-review';

export const clockAndPlaceParts: BenchParts<
  ClockAndPlaceVariant,
  ClockAndPlaceDraft,
  ClockAndPlaceSubmission
> = {
  emptyDraft: emptyClockAndPlaceDraft,
  readDraft: (json) => clockAndPlaceDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft) => draft,
  missing: () => '',
  summary: () => 'Clock and place',
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: () => null,
  Table: () => null,
  Panel: () => null,
  hints: () => [],
  review: clockAndPlaceReview,
};
