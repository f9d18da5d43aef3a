'use client';

import {
  clockAndPlaceDraftSchema,
  emptyClockAndPlaceDraft,
  type ClockAndPlaceDraft,
  type ClockAndPlaceSubmission,
} from '@/lib/grading/bench/clock-and-place/clock-and-place-submission';
import {
  emptyRows,
  formAsItStands,
} from '@/lib/grading/bench/clock-and-place/clock-and-place-work';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import type { BenchParts } from '../bench/bench-parts';
import { ClockDrawing } from './clock-drawing';
import { clockHints } from './clock-hints';
import { ClockPanel } from './clock-panel';
import { clockAndPlaceReview, clockMissing } from './clock-and-place-review';
import { ClockTable } from './clock-table';
import { formNow } from './clock-view';

export const clockAndPlaceParts: BenchParts<
  ClockAndPlaceVariant,
  ClockAndPlaceDraft,
  ClockAndPlaceSubmission
> = {
  emptyDraft: emptyClockAndPlaceDraft,
  readDraft: (json) => clockAndPlaceDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft, variant) => {
    const form = formNow(variant, draft);
    return form === null || clockMissing(draft, variant) !== '' ? null : { ...draft, form };
  },
  missing: clockMissing,
  summary: (draft, variant) => {
    const missing = clockMissing(draft, variant);
    const left = emptyRows(formAsItStands(variant, draft)).length;
    if (missing === '') return 'The form is full';
    return left === 0 || variant.change !== null
      ? `Next: ${missing}`
      : `The mount asks: ${String(6 - left)} of 6 rows filled in`;
  },
  viewLabel: 'How to look at the card and the sky',
  drawingName: 'Bench',
  Drawing: ClockDrawing,
  Table: ClockTable,
  Panel: ClockPanel,
  hints: clockHints,
  review: clockAndPlaceReview,
};
