import type { DressRehearsalDraft } from '@/lib/grading/bench/dress-rehearsal-submission';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal-variant';
import type { AnswerLine } from '../bench/bench-parts';

/** An answer at "Dress rehearsal" in words: for its student before it is sent, and for the teacher's answer key. */
export function dressRehearsalReview(
  _draft: DressRehearsalDraft,
  _variant: DressRehearsalVariant,
): readonly AnswerLine[] {
  return [];
}
