'use client';

import {
  balanceDraftSchema,
  emptyBalanceDraft,
  type BalanceDraft,
  type BalanceSubmission,
} from '@/lib/grading/bench/balance-submission';
import type { BalanceVariant } from '@/lib/variants/bench/balance-variant';
import type { BenchParts } from '../bench/bench-parts';
import { balanceReview } from './balance-review';

export const balanceParts: BenchParts<BalanceVariant, BalanceDraft, BalanceSubmission> = {
  emptyDraft: emptyBalanceDraft,
  readDraft: (json) => balanceDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft) => draft,
  missing: () => '',
  summary: () => 'Balance',
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: () => null,
  Table: () => null,
  Panel: () => null,
  hints: () => [],
  review: balanceReview,
};
