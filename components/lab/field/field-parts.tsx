'use client';

import {
  emptyFieldDraft,
  fieldDraftSchema,
  fieldSubmissionSchema,
  type FieldDraft,
  type FieldSubmission,
} from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import type { BenchParts } from '../bench/bench-parts';
import { FieldDrawing } from './field-drawing';
import { fieldHints } from './field-hints';
import { FieldPanel } from './field-panel';
import { fieldReview } from './field-review';
import { FieldTable } from './field-table';
import { missingInWords, nameOf } from './field-words';

export const fieldParts: BenchParts<FieldVariant, FieldDraft, FieldSubmission> = {
  emptyDraft: emptyFieldDraft,
  readDraft: (json) => fieldDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft, variant) =>
    missingInWords(draft, variant) === ''
      ? (fieldSubmissionSchema.safeParse(draft).data ?? null)
      : null,
  missing: missingInWords,
  summary: (draft, variant) =>
    draft.eyepieceId === null
      ? 'Choose an eyepiece'
      : `Chosen: ${nameOf(variant, draft.eyepieceId)}`,
  viewLabel: 'How to look through the telescope',
  drawingName: 'Eyepiece',
  Drawing: FieldDrawing,
  Table: FieldTable,
  Panel: FieldPanel,
  hints: fieldHints,
  review: fieldReview,
};
