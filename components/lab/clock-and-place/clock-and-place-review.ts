import type { ClockAndPlaceDraft } from '@/lib/grading/bench/clock-and-place-submission';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place-variant';
import type { AnswerLine } from '../bench/bench-parts';

/** An answer at "Clock and place" in words: for its student before it is sent, and for the teacher's answer key. */
export function clockAndPlaceReview(
  _draft: ClockAndPlaceDraft,
  _variant: ClockAndPlaceVariant,
): readonly AnswerLine[] {
  return [];
}
