'use client';

import {
  powerDraftSchema,
  emptyPowerDraft,
  type PowerDraft,
  type PowerSubmission,
} from '@/lib/grading/bench/power-submission';
import type { PowerVariant } from '@/lib/variants/bench/power-variant';
import type { BenchParts } from '../bench/bench-parts';
import { PowerDrawing } from './power-drawing';
import { powerHints } from './power-hints';
import { PowerPanel } from './power-panel';
import { powerReview } from './power-review';
import { PowerTable } from './power-table';
import { missing, submissionOf, summary } from './power-task';

export const powerParts: BenchParts<PowerVariant, PowerDraft, PowerSubmission> = {
  emptyDraft: emptyPowerDraft,
  readDraft: (json) => powerDraftSchema.safeParse(json).data ?? null,
  submissionOf,
  missing,
  summary,
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: PowerDrawing,
  Table: PowerTable,
  Panel: PowerPanel,
  hints: powerHints,
  review: powerReview,
};
