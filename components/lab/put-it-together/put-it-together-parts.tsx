'use client';

import { hazardMoments } from '@/lib/assembly/hazards';
import {
  emptyPutItTogetherDraft,
  putItTogetherDraftSchema,
  putItTogetherSubmissionSchema,
  type PutItTogetherDraft,
  type PutItTogetherSubmission,
} from '@/lib/grading/bench/put-it-together/put-it-together-submission';
import { gatesAfter } from '@/lib/grading/bench/put-it-together/grade-put-it-together';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import type { BenchParts } from '../bench/bench-parts';
import { PutItTogetherDrawing } from './put-it-together-drawing';
import { PutItTogetherPanel } from './put-it-together-panel';
import { putItTogetherReview } from './put-it-together-review';
import { PutItTogetherTable } from './put-it-together-table';
import { momentName } from './sight-words';
import { stepName } from './step-words';

export const putItTogetherParts: BenchParts<
  PutItTogetherVariant,
  PutItTogetherDraft,
  PutItTogetherSubmission
> = {
  emptyDraft: emptyPutItTogetherDraft,
  readDraft: (json) => putItTogetherDraftSchema.safeParse(json).data ?? null,
  submissionOf: (draft) =>
    draft.order.length === 0 ? null : (putItTogetherSubmissionSchema.safeParse(draft).data ?? null),
  missing: ({ order, hazards }) => {
    const unseen = hazardMoments.filter((moment) => hazards[moment] === null);
    const parts = [
      ...(order.length === 0 ? ['the steps'] : []),
      ...unseen.map((moment) => `a look round ${momentName[moment].toLowerCase()}`),
    ];
    return `${parts.join(', ')}.`;
  },
  dangers: ({ order }, variant) => gatesAfter(variant, order).length,
  summary: ({ order }) => {
    const last = order.at(-1);
    return last === undefined ? 'Nothing done yet' : `${String(order.length)}. ${stepName[last]}`;
  },
  viewLabel: 'How to look at the bench',
  drawingName: 'Bench',
  Drawing: PutItTogetherDrawing,
  Table: PutItTogetherTable,
  Panel: PutItTogetherPanel,
  hints: ({ kind }) =>
    kind === 'take-down'
      ? [
          'What went on last comes off first.',
          'Before a clamp is opened somebody holds what it held.',
          'Glass is covered before hands come near it; legs are folded when nothing stands on them.',
        ]
      : [
          'From the ground upwards: nothing goes on what cannot bear it yet.',
          'The tube is held by hands until both the clamp and the stop screw hold it.',
          'What hangs on the tube comes after that, the eyepiece into its prism or diagonal, low power first; caps last, and never by day.',
        ],
  review: putItTogetherReview,
};
