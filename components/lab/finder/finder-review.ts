import type { FinderDraft } from '@/lib/grading/bench/finder-submission';
import type { FinderVariant } from '@/lib/variants/bench/finder-variant';
import type { AnswerLine } from '../bench/bench-parts';

/** An answer at "Finder" in words: for its student before it is sent, and for the teacher's answer key. */
export function finderReview(_draft: FinderDraft, _variant: FinderVariant): readonly AnswerLine[] {
  return [];
}
