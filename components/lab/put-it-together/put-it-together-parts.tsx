'use client';

import {
  putItTogetherDraftSchema,
  emptyPutItTogetherDraft,
  type PutItTogetherDraft,
  type PutItTogetherSubmission,
} from '@/lib/grading/bench/put-it-together-submission';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together-variant';
import type { BenchParts } from '../bench/bench-parts';
import { putItTogetherReview } from './put-it-together-review';

export const putItTogetherParts: BenchParts<
  PutItTogetherVariant,
  PutItTogetherDraft,
  PutItTogetherSubmission
> = {
  emptyDraft: emptyPutItTogetherDraft,
  readDraft: (json) => putItTogetherDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft) => draft,
  missing: () => '',
  summary: () => 'Put it together',
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: () => null,
  Table: () => null,
  Panel: () => null,
  hints: () => [],
  review: putItTogetherReview,
};
