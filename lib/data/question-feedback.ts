import { gradeItem, type ItemFeedback } from '../items/grade-item';
import { itemAnswerSchema } from '../items/item-answer';
import { storedItemSchema } from './stored-item';

/** What the answer that counts came to, from the two JSON columns; @throws for a question without one. */
export function feedbackOf({ item, answer }: { item: unknown; answer: unknown }): ItemFeedback {
  const grading = gradeItem(storedItemSchema.parse(item), itemAnswerSchema.parse(answer));
  if (!grading.ok) throw new Error('an answer was kept that cannot be marked');
  return grading.feedback;
}
