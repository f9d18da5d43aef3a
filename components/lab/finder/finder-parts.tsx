'use client';

import {
  finderDraftSchema,
  emptyFinderDraft,
  type FinderDraft,
  type FinderSubmission,
} from '@/lib/grading/bench/finder-submission';
import type { FinderVariant } from '@/lib/variants/bench/finder-variant';
import type { BenchParts } from '../bench/bench-parts';
import { finderReview } from './finder-review';

export const finderParts: BenchParts<FinderVariant, FinderDraft, FinderSubmission> = {
  emptyDraft: emptyFinderDraft,
  readDraft: (json) => finderDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft) => draft,
  missing: () => '',
  summary: () => 'Finder',
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: () => null,
  Table: () => null,
  Panel: () => null,
  hints: () => [],
  review: finderReview,
};
