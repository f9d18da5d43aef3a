'use client';

import {
  fieldDraftSchema,
  emptyFieldDraft,
  type FieldDraft,
  type FieldSubmission,
} from '@/lib/grading/bench/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field-variant';
import type { BenchParts } from '../bench/bench-parts';
import { fieldReview } from './field-review';

export const fieldParts: BenchParts<FieldVariant, FieldDraft, FieldSubmission> = {
  emptyDraft: emptyFieldDraft,
  readDraft: (json) => fieldDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft) => draft,
  missing: () => '',
  summary: () => 'Field',
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: () => null,
  Table: () => null,
  Panel: () => null,
  hints: () => [],
  review: fieldReview,
};
