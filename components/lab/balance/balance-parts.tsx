'use client';

import { afterAll } from '@/lib/balance/handle-tube';
import {
  balanceDraftSchema,
  emptyBalanceDraft,
  type BalanceDraft,
  type BalanceSubmission,
} from '@/lib/grading/bench/balance/balance-submission';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import type { BenchParts } from '../bench/bench-parts';
import { BalanceDrawing } from './balance-drawing';
import { balanceHints } from './balance-hints';
import { BalancePanel } from './balance-panel';
import { balanceReview } from './balance-review';
import { BalanceTable } from './balance-table';
import { degText, mmText } from './balance-words';

/** What has to be there before anybody can say whether the tube holds. */
function missing(draft: BalanceDraft, variant: BalanceVariant): string {
  const state = afterAll(variant, draft.actions);
  if (variant.asksForesight && state.foreseen === null) return 'say what you expect.';
  if (state.fallen) return 'put the tube back into the clamp.';
  if (state.trials.length === 0) return 'let go of the tube and see what it does.';
  if (state.handOn) return 'let go of the tube: it has to hold by itself.';
  if (variant.asksReading && draft.readingMm === null) return 'tell the balance point.';
  return '';
}

export const balanceParts: BenchParts<BalanceVariant, BalanceDraft, BalanceSubmission> = {
  emptyDraft: emptyBalanceDraft,
  readDraft: (json) => balanceDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft, variant) => (missing(draft, variant) === '' ? draft : null),
  missing,
  dangers: ({ actions }, variant) => afterAll(variant, actions).hazards.length,
  summary: (draft, variant) => {
    const state = afterAll(variant, draft.actions);
    if (variant.asksForesight && state.foreseen === null) return 'First: what do you expect?';
    if (state.fallen) return 'The tube fell. Put it back.';
    const last = state.trials.at(-1);
    const did =
      last === undefined || last.arrangement !== state.arrangement
        ? ''
        : ` · ${last.moves === 'holds' ? 'held' : `${last.moves} sank`}`;
    return `${mmText(state.clampMm)}, clamp ${state.clampOpen ? 'open' : 'locked'} · ${degText(state.altitudeDeg)}${did}`;
  },
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: BalanceDrawing,
  Table: BalanceTable,
  Panel: BalancePanel,
  hints: balanceHints,
  review: balanceReview,
};
