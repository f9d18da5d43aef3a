'use client';

import {
  powerDraftSchema,
  emptyPowerDraft,
  type PowerDraft,
  type PowerSubmission,
} from '@/lib/grading/bench/power/power-submission';
import { powerGates } from '@/lib/grading/bench/power/power-result';
import type { PowerVariant } from '@/lib/variants/bench/power/power-variant';
import type { BenchParts } from '../bench/bench-parts';
import { PowerDrawing } from './power-drawing';
import { powerHints } from './power-hints';
import { benchOf } from './power-play';
import { PowerPanel } from './power-panel';
import { powerReview } from './power-review';
import { PowerTable } from './power-table';
import { missing, submissionOf, summary } from './power-task';

export const powerParts: BenchParts<PowerVariant, PowerDraft, PowerSubmission> = {
  emptyDraft: emptyPowerDraft,
  readDraft: (json) => powerDraftSchema.safeParse(json).data ?? null,
  submissionOf,
  missing,
  dangers: (draft, variant) => {
    const { happened } = benchOf(variant, draft);
    return powerGates.filter((id) => happened.some(({ code }) => code === id)).length;
  },
  summary,
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: PowerDrawing,
  Table: PowerTable,
  Panel: PowerPanel,
  hints: powerHints,
  review: powerReview,
};
