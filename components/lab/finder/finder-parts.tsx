'use client';

import {
  emptyFinderDraft,
  finderDraftSchema,
  type FinderDraft,
  type FinderSubmission,
} from '@/lib/grading/bench/finder/finder-submission';
import { answered } from '@/lib/grading/bench/finder/grade-finder';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import type { BenchParts } from '../bench/bench-parts';
import { FinderDrawing } from './finder-drawing';
import { finderHints } from './finder-hints';
import { FinderPanel } from './finder-panel';
import { finderReview } from './finder-review';
import { FinderTable } from './finder-table';
import { chosenAim, stateOf } from './finder-work';

function missing(draft: FinderDraft, variant: FinderVariant): string {
  const state = stateOf(variant, draft);
  if (chosenAim(variant, state) === null) return 'choose what to set it on.';
  if (state.atLock === null || !state.locked) {
    return 'lock the screws when the dot sits on what is centred in the eyepiece.';
  }
  if (state.atLock.targetId === null)
    return 'lock the screws anew: you have chosen what to set it on since.';
  if (state.dusk && variant.day !== null && !state.atLock.dusk) {
    return 'lock the screws at dusk, on a light in the sky.';
  }
  return answered(variant, draft.answers) ? '' : 'answer what is asked.';
}

function summary(draft: FinderDraft, variant: FinderVariant): string {
  const state = stateOf(variant, draft);
  const aim = chosenAim(variant, state);
  return [
    aim === null ? 'Nothing chosen yet' : `On ${aim.name}`,
    `caps ${state.capsOn ? 'on' : 'off'}`,
    state.locked ? 'locked' : 'not locked',
  ].join(', ');
}

export const finderParts: BenchParts<FinderVariant, FinderDraft, FinderSubmission> = {
  emptyDraft: emptyFinderDraft,
  readDraft: (json) => finderDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft, variant) => (missing(draft, variant) === '' ? draft : null),
  missing,
  dangers: (draft, variant) => stateOf(variant, draft).hazards.length,
  summary,
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: FinderDrawing,
  Table: FinderTable,
  Panel: FinderPanel,
  hints: finderHints,
  review: finderReview,
};
