'use client';

import {
  levelDraftSchema,
  emptyLevelDraft,
  type LevelDraft,
  type LevelSubmission,
} from '@/lib/grading/bench/level-submission';
import type { LevelVariant } from '@/lib/variants/bench/level-variant';
import type { BenchParts } from '../bench/bench-parts';
import { levelReview } from './level-review';

export const levelParts: BenchParts<LevelVariant, LevelDraft, LevelSubmission> = {
  emptyDraft: emptyLevelDraft,
  readDraft: (json) => levelDraftSchema.safeParse(json).data ?? null,
  submissionOf: () => null,
  missing: () => '',
  summary: () => 'Level',
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: () => null,
  Table: () => null,
  Panel: () => null,
  hints: () => [],
  review: levelReview,
};
