import { z } from 'zod';
import { itemAnswerSchema } from '../../items/item-answer';

/** One answer a question, in the set's order; null, or missing at the end, where there is none. */
const answers = z.array(itemAnswerSchema.nullable()).max(40);

/** A set's answers so far, and as they are handed in. */
export const questionSubmissionSchema = z.strictObject({ answers });
export type QuestionSubmission = z.output<typeof questionSubmissionSchema>;

export const nothingAnswered: QuestionSubmission = { answers: [] };
