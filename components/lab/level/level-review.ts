import type { LevelDraft } from '@/lib/grading/bench/level-submission';
import type { LevelVariant } from '@/lib/variants/bench/level-variant';
import type { AnswerLine } from '../bench/bench-parts';

/** An answer at "Level" in words: for its student before it is sent, and for the teacher's answer key. */
export function levelReview(_draft: LevelDraft, _variant: LevelVariant): readonly AnswerLine[] {
  return [];
}
