import type { PowerDraft } from '@/lib/grading/bench/power-submission';
import type { PowerVariant } from '@/lib/variants/bench/power-variant';
import type { AnswerLine } from '../bench/bench-parts';

/** An answer at "Power" in words: for its student before it is sent, and for the teacher's answer key. */
export function powerReview(_draft: PowerDraft, _variant: PowerVariant): readonly AnswerLine[] {
  return [];
}
