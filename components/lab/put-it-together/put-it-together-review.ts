import type { PutItTogetherDraft } from '@/lib/grading/bench/put-it-together-submission';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together-variant';
import type { AnswerLine } from '../bench/bench-parts';

/** An answer at "Put it together" in words: for its student before it is sent, and for the teacher's answer key. */
export function putItTogetherReview(
  _draft: PutItTogetherDraft,
  _variant: PutItTogetherVariant,
): readonly AnswerLine[] {
  return [];
}
