import type { FieldDraft } from '@/lib/grading/bench/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field-variant';
import type { AnswerLine } from '../bench/bench-parts';

/** An answer at "Field" in words: for its student before it is sent, and for the teacher's answer key. */
export function fieldReview(_draft: FieldDraft, _variant: FieldVariant): readonly AnswerLine[] {
  return [];
}
