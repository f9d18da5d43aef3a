'use client';

import {
  levelDraftSchema,
  emptyLevelDraft,
  type LevelDraft,
  type LevelSubmission,
} from '@/lib/grading/bench/level/level-submission';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import type { BenchParts } from '../bench/bench-parts';
import { LevelDrawing } from './level-drawing';
import { levelHints } from './level-hints';
import { LevelPanel } from './level-panel';
import { levelReview } from './level-review';
import { LevelTable } from './level-table';
import { bubbleInShort } from './level-words';
import { missingOf, stateOf, submissionOf } from './level-work';

export const levelParts: BenchParts<LevelVariant, LevelDraft, LevelSubmission> = {
  emptyDraft: emptyLevelDraft,
  readDraft: (json) => levelDraftSchema.safeParse(json).data ?? null,
  submissionOf,
  missing: missingOf,
  dangers: (draft, variant) => (stateOf(draft, variant).ranIn === null ? 0 : 1),
  summary: (draft, variant) => {
    const state = stateOf(draft, variant);
    return `Bubble ${bubbleInShort(variant, state)} · moves: ${String(state.moves)}`;
  },
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: LevelDrawing,
  Table: LevelTable,
  Panel: LevelPanel,
  hints: levelHints,
  review: levelReview,
};
